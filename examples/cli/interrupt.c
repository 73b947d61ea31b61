/* interrupt.c - Ctrl-C noticed at the next safe place.
 *
 * SPDX-License-Identifier: MIT */
#define _GNU_SOURCE
#include "interrupt.h"

#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdatomic.h>
#include <stddef.h>
#include <unistd.h>

/* Atomic, because workers of a batch look too; without locks, so that a signal may set them. */
static atomic_int asked;
static atomic_int awake;
static int pipe_ends[2] = { -1, -1 };

void wake(void)
{
    const int before = errno;
    awake = 1;
    if (write(pipe_ends[1], "", 1) < 0)
        errno = before; /* the pipe is full: somebody has written already */
    errno = before;
}

static void note_interrupt(int signal)
{
    (void)signal;
    asked = 1;
    wake();
}

/* With SA_RESETHAND the second signal has its usual effect. What our caller told us to ignore (a background job, nohup)
 * stays ignored. */
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
    if (pipe2(pipe_ends, O_CLOEXEC | O_NONBLOCK) != 0)
        return; /* a signal then has its usual effect */
    watch(SIGINT);
    watch(SIGTERM);
    watch(SIGHUP);
}

bool interrupted(void)
{
    return asked != 0;
}

int wake_descriptor(void)
{
    return pipe_ends[0];
}

bool is_awake(void)
{
    return awake != 0;
}
