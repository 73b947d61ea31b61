/* patterns.c - pattern files as the requests of a batch.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "patterns.h"

#include <dirent.h>
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include "lines.h"
#include "memory.h"
#include "pattern.h"

struct asking {
    FILE *out;
    struct pattern_requests *requests;
    struct failure *failure;
};

static bool cannot_read(struct asking *asking, const char *name, const char *why)
{
    failure_say(asking->failure, NULL, "Cannot read %s: %s.", name, why);
    asking->failure->exit_code = EXIT_FILE_TROUBLE;
    return false;
}

/* ---- one file --------------------------------------------------------------------------------------------------- */

/* What it holds goes into the check. */
static bool check_file(struct asking *asking, const char *name)
{
    char block[16384];
    size_t length;
    FILE *file = fopen(name, "rb");
    if (file == NULL)
        return cannot_read(asking, name, strerror(errno));
    while ((length = fread(block, 1, sizeof block, file)) > 0)
        asking->requests->check = check_bytes(asking->requests->check, block, length);
    const bool fine = ferror(file) == 0;
    fclose(file);
    return fine || cannot_read(asking, name, strerror(EIO));
}

/* {"command": "pattern", "file": ..., "size": ..., "id": {"file": ..., "size": ...}}; without a size where none can be
 * had. */
static bool write_request(struct asking *asking, const char *name, const char *size)
{
    json_t *id = size != NULL ? json_pack("{s:s, s:s}", "file", name, "size", size) : json_pack("{s:s}", "file", name);
    json_t *request = id != NULL ? json_pack("{s:s}", "command", "pattern") : NULL;
    if (request == NULL)
        return cannot_read(asking, name, "its name is not valid UTF-8");
    json_object_update(request, id);
    json_object_set_new(request, "id", id);
    char *text = json_dumps(request, JSON_COMPACT);
    fprintf(asking->out, "%s\n", text);
    free(text);
    json_decref(request);
    return true;
}

static bool ask_for_file(struct asking *asking, const char *name)
{
    struct complaints complaints = { NULL, 0, 0 };
    if (!check_file(asking, name))
        return false;
    struct pattern *pattern = pattern_read(name, &complaints);
    complaints_free(&complaints); /* they come again, as the answer */
    if (pattern == NULL)
        return write_request(asking, name, NULL);
    bool fine = true;
    for (size_t i = 0; fine && i < pattern->sizes_count; i++)
        fine = write_request(asking, name, pattern->sizes[i].name);
    pattern_free(pattern);
    return fine;
}

/* ---- a folder --------------------------------------------------------------------------------------------------- */

static int is_pattern_name(const struct dirent *entry)
{
    static const char ending[] = ".json";
    const size_t length = strlen(entry->d_name);
    return entry->d_name[0] != '.' && length >= sizeof ending &&
           strcmp(entry->d_name + length - (sizeof ending - 1), ending) == 0;
}

/* In the order of their names, whatever the language. */
static int by_name(const struct dirent **a, const struct dirent **b)
{
    return strcmp((*a)->d_name, (*b)->d_name);
}

static bool ask_for_folder(struct asking *asking, const char *folder)
{
    struct dirent **entries = NULL;
    const int count = scandir(folder, &entries, is_pattern_name, by_name);
    bool fine = count > 0;
    if (!fine)
        cannot_read(asking, folder, count < 0 ? strerror(errno) : "no file in it ends in .json");
    for (int i = 0; i < count; i++) {
        const size_t size = strlen(folder) + strlen(entries[i]->d_name) + 2;
        char *name = need_memory(size);
        const bool slash = folder[strlen(folder) - 1] == '/';
        snprintf(name, size, "%s%s%s", folder, slash ? "" : "/", entries[i]->d_name);
        fine = fine && ask_for_file(asking, name);
        free(name);
        free(entries[i]);
    }
    free(entries);
    return fine;
}

bool ask_for_patterns(json_t *names, struct pattern_requests *requests, struct failure *failure)
{
    *requests = (struct pattern_requests){ .text = NULL };
    struct asking asking = { open_text(&requests->text, &requests->length), requests, failure };
    bool fine = true;
    for (size_t i = 0; fine && i < json_array_size(names); i++) {
        struct stat found;
        const char *name = json_string_value(json_array_get(names, i));
        if (stat(name, &found) != 0)
            fine = cannot_read(&asking, name, strerror(errno));
        else
            fine = S_ISDIR(found.st_mode) ? ask_for_folder(&asking, name) : ask_for_file(&asking, name);
    }
    fclose(asking.out);
    return fine;
}
