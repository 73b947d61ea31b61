// What the handles have in common: who uses one, and when its memory is given back.
//
// SPDX-License-Identifier: MIT

/** A handle's memory. Its handle uses it, and so does every handle that reads it; the last of them frees it. */
export class Hold {
    constructor(pointer, free, reads) {
        this.pointer = pointer;
        this.free = free;
        this.reads = reads;
        this.otherUsers = 0;
        if (reads)
            reads.otherUsers++;
    }

    letGo() {
        if (this.otherUsers > 0) {
            this.otherUsers--;
            return;
        }
        this.free(this.pointer);
        this.reads?.letGo();
    }
}

const forgotten = new FinalizationRegistry((hold) => hold.letGo());

/** An object of the library. free() gives its memory back; so does, some time, that nobody has it any more. */
export class Handle {
    #hold;

    constructor(hold) {
        this.#hold = hold;
        forgotten.register(this, hold, this);
    }

    /** Its memory, as long as it was not freed. */
    static holdOf(handle) {
        if (!handle.#hold)
            throw new ReferenceError(`this ${handle.constructor.name} was freed`);
        return handle.#hold;
    }

    /** Whether free() was called. */
    get freed() {
        return !this.#hold;
    }

    /** Gives the memory back; a second time it does nothing. What still reads it may be used on. */
    free() {
        forgotten.unregister(this);
        const hold = this.#hold;
        this.#hold = undefined;
        hold?.letGo();
    }
}

if (Symbol.dispose)
    Handle.prototype[Symbol.dispose] = Handle.prototype.free;
