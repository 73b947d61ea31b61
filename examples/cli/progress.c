/* progress.c - the progress line.
 *
 * SPDX-License-Identifier: MIT */
#define _DEFAULT_SOURCE
#include "progress.h"

#include <stdio.h>
#include <string.h>
#include <sys/ioctl.h>
#include <time.h>
#include <unistd.h>

#define BETWEEN_DRAWINGS_MS 100
#define BAR_WIDTH 24
#define LINE_MAX_COLUMNS 200

static int64_t now_ms(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (int64_t)now.tv_sec * 1000 + now.tv_nsec / 1000000;
}

void progress_start(struct progress *progress, int32_t when, int64_t total_bytes)
{
    bool terminal = isatty(STDERR_FILENO) == 1;
    *progress = (struct progress){ .shown = when == WHEN_ALWAYS || (when == WHEN_AUTO && terminal),
                                   .total_bytes = total_bytes,
                                   .start_ms = now_ms() };
    progress->last_ms = progress->start_ms;
}

static size_t terminal_columns(void)
{
    struct winsize size = { 0 };
    if (ioctl(STDERR_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0)
        return 80;
    return size.ws_col;
}

static int write_bar(char *line, size_t cap, int64_t bytes, int64_t total)
{
    char bar[BAR_WIDTH + 1];
    int64_t done = bytes < total ? bytes : total;
    size_t filled = (size_t)(done * BAR_WIDTH / total);
    memset(bar, '.', BAR_WIDTH);
    memset(bar, '#', filled);
    bar[BAR_WIDTH] = '\0';
    return snprintf(line, cap, "[%s] %3d %%  ", bar, (int)(done * 100 / total));
}

static void write_time(char *line, size_t cap, int64_t seconds)
{
    int hours = (int)(seconds / 3600);
    int minutes = (int)(seconds / 60 % 60);
    if (hours > 0)
        snprintf(line, cap, ", %d:%02d:%02d left", hours, minutes, (int)(seconds % 60));
    else
        snprintf(line, cap, ", %d:%02d left", minutes, (int)(seconds % 60));
}

/* The time left, if it goes on as so far; nothing while that cannot be told. */
static void write_time_left(char *line, size_t cap, const struct progress *progress, int64_t bytes, int64_t elapsed_ms)
{
    int64_t done = bytes - progress->bytes_before;
    int64_t left = progress->total_bytes - bytes;
    if (progress->total_bytes > 0 && left >= 0 && done > 0 && elapsed_ms >= 500)
        write_time(line, cap, left * (elapsed_ms / 100) / done / 10);
}

static void draw(const struct progress *progress, int64_t bytes, int64_t lines, int64_t failed)
{
    char line[LINE_MAX_COLUMNS] = "";
    int64_t elapsed_ms = now_ms() - progress->start_ms;
    int64_t now = lines - progress->lines_before;
    long long rate = elapsed_ms > 0 ? (long long)(now * 1000 / elapsed_ms) : 0;
    int used = progress->total_bytes > 0 ? write_bar(line, sizeof line, bytes, progress->total_bytes) : 0;
    used += snprintf(line + used, sizeof line - (size_t)used, "%lld lines, %lld failed, %lld/s", (long long)lines,
                     (long long)failed, rate);
    write_time_left(line + used, sizeof line - (size_t)used, progress, bytes, elapsed_ms);
    fprintf(stderr, "\r%.*s\033[K", (int)terminal_columns() - 1, line);
    fflush(stderr);
}

void progress_step(struct progress *progress, int64_t bytes, int64_t lines, int64_t failed)
{
    if (!progress->shown || now_ms() - progress->last_ms < BETWEEN_DRAWINGS_MS)
        return;
    progress->last_ms = now_ms();
    draw(progress, bytes, lines, failed);
}

void progress_end(struct progress *progress, int64_t bytes, int64_t lines, int64_t failed)
{
    if (!progress->shown)
        return;
    draw(progress, bytes, lines, failed);
    fputc('\n', stderr);
}
