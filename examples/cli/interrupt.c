/* interrupt.c - Ctrl-C noticed at the next safe place.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "interrupt.h"

#include <signal.h>
#include <stddef.h>

static volatile sig_atomic_t asked;

static void note_interrupt(int signal)
{
    (void)signal;
    asked = 1;
}

/* Without SA_RESTART a waiting read comes back; with SA_RESETHAND the second signal has its usual effect. What our
 * caller told us to ignore (a background job, nohup) stays ignored. */
static void watch(int signal)
{
    struct sigaction before;
    struct sigaction action = { .sa_handler = note_interrupt, .sa_flags = (int)SA_RESETHAND };
    sigemptyset(&action.sa_mask);
    if (sigaction(signal, NULL, &before) == 0 && before.sa_handler != SIG_IGN)
        sigaction(signal, &action, NULL);
}

void watch_for_interrupt(void)
{
    watch(SIGINT);
    watch(SIGTERM);
    watch(SIGHUP);
}

bool interrupted(void)
{
    return asked != 0;
}
