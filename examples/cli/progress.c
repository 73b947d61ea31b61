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

void progress_start(struct progress *progress, const char *wanted, int64_t total_bytes)
{
    bool terminal = isatty(STDERR_FILENO) == 1;
    progress->shown = strcmp(wanted, "always") == 0 || (strcmp(wanted, "auto") == 0 && terminal);
    progress->total_bytes = total_bytes;
    progress->start_ms = now_ms();
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

/* The time left, if it goes on as so far; nothing while that cannot be told. */
static void write_time_left(char *line, size_t cap, int64_t bytes, int64_t total, int64_t elapsed_ms)
{
    if (total == 0 || bytes == 0 || elapsed_ms < 500)
        return;
    int64_t left_s = (total - bytes) * (elapsed_ms / 100) / bytes / 10;
    if (left_s >= 0)
        snprintf(line, cap, ", %d:%02d left", (int)(left_s / 60), (int)(left_s % 60));
}

static void draw(const struct progress *progress, int64_t bytes, int64_t lines, int64_t failed)
{
    char line[LINE_MAX_COLUMNS] = "";
    int64_t elapsed_ms = now_ms() - progress->start_ms;
    long long rate = elapsed_ms > 0 ? (long long)(lines * 1000 / elapsed_ms) : 0;
    int used = progress->total_bytes > 0 ? write_bar(line, sizeof line, bytes, progress->total_bytes) : 0;
    used += snprintf(line + used, sizeof line - (size_t)used, "%lld lines, %lld failed, %lld/s", (long long)lines,
                     (long long)failed, rate);
    write_time_left(line + used, sizeof line - (size_t)used, bytes, progress->total_bytes, elapsed_ms);
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
