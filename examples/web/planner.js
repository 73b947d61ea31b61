// Asks a Worker to work a pattern out, and a fresh one when the last request is no longer wanted: a spare one is ready.
//
// SPDX-License-Identifier: MIT

const PATIENCE = 400; // milliseconds that a newer request waits for the sizes of the one before

export class Planner {
    #id = 0;
    #waiting; // the newest request, while the one before is quick to end
    #timer;
    #busy = false;
    #isSearching = false;

    /** tell: called with each message that answers the newest request. */
    constructor(module, tell) {
        this.module = module;
        this.tell = tell;
        this.worker = this.#begin();
        this.spare = this.#begin();
    }

    #begin() {
        const worker = new Worker(new URL("worker.js", import.meta.url), { type: "module" });
        worker.postMessage({ module: this.module });
        worker.onmessage = ({ data }) => worker === this.worker && this.#hear(data);
        worker.onerror = (event) => worker === this.worker && this.#fail(event.message);
        return worker;
    }

    /** A Worker that broke down, for want of memory as a rule, is replaced. */
    #fail(reason) {
        this.stop();
        const sentence = `this is more than a page can work out: ${reason}`;
        this.tell({ id: this.#id, phase: "wrong", complaints: [{ place: "", value: null, sentence }] });
    }

    #hear(message) {
        const isOver = message.phase === "wrong" || message.phase === "done";
        this.#isSearching ||= message.phase === "sizes";
        if (isOver) this.#busy = false;
        if (message.id === this.#id) this.tell(message);
        if (this.#waiting && (isOver || this.#isSearching)) this.#next();
    }

    /** Ends what runs. What it has told stands. */
    stop() {
        if (!this.#busy) return;
        this.worker.terminate();
        this.worker = this.spare;
        this.spare = this.#begin();
        this.#busy = false;
    }

    /** units: that lengths are shown in, where they were chosen. */
    ask(text, size, units) {
        this.#id++;
        this.#waiting = { id: this.#id, text, size, units };
        clearTimeout(this.#timer);
        if (!this.#busy || this.#isSearching) this.#next();
        else this.#timer = setTimeout(() => this.#waiting && this.#next(), PATIENCE);
    }

    #next() {
        this.stop();
        clearTimeout(this.#timer);
        this.#busy = true;
        this.#isSearching = false;
        this.worker.postMessage(this.#waiting);
        this.#waiting = undefined;
    }
}
