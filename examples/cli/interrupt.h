/* interrupt.h - Ctrl-C: asked for once, noticed at the next safe place; a second one ends at once.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_INTERRUPT_H
#define CLI_INTERRUPT_H

#include <stdbool.h>

void watch_for_interrupt(void);
bool interrupted(void);

/* Who waits for input waits for this descriptor too: it can be read from once somebody wants the waiting to end, for an
 * interruption or by wake(). */
int wake_descriptor(void);
void wake(void);
bool is_awake(void);

#endif
