/* waiting.c - what is being done, for those who wait for it at a terminal.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <stdarg.h>
#include <stdio.h>
#include <time.h>
#include <unistd.h>

#include "work.h"

static struct timespec begun;
static bool is_shown;

/* Half a second goes by without a word. */
static bool is_long(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    if (begun.tv_sec == 0)
        begun = now;
    return (now.tv_sec - begun.tv_sec) * 1000 + (now.tv_nsec - begun.tv_nsec) / 1000000 > 500;
}

void waiting(const char *format, ...)
{
    if (!is_long() || isatty(STDERR_FILENO) != 1)
        return;
    va_list arguments;
    va_start(arguments, format);
    fputs("\r\033[K", stderr);
    vfprintf(stderr, format, arguments);
    va_end(arguments);
    fflush(stderr);
    is_shown = true;
}

void waiting_end(void)
{
    if (is_shown)
        fputs("\r\033[K", stderr);
    is_shown = false;
}
