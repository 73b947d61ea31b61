/* interrupt.h - Ctrl-C: asked for once, noticed at the next safe place; a second one ends at once.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_INTERRUPT_H
#define CLI_INTERRUPT_H

#include <stdbool.h>

void watch_for_interrupt(void);
bool interrupted(void);

#endif
