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

static bool cannot_read(struct failure *failure, const char *name, const char *why)
{
    failure_say(failure, NULL, "Cannot read %s: %s.", name, why);
    failure->exit_code = EXIT_FILE_TROUBLE;
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
        return cannot_read(asking->failure, name, strerror(errno));
    while ((length = fread(block, 1, sizeof block, file)) > 0)
        asking->requests->check = check_bytes(asking->requests->check, block, length);
    const bool fine = ferror(file) == 0;
    fclose(file);
    return fine || cannot_read(asking->failure, name, strerror(EIO));
}

/* {"command": "pattern", "file": ..., "size": ..., "id": {"file": ..., "size": ...}}; without a size where none can be
 * had. */
static void write_request(struct asking *asking, const char *name, const char *size)
{
    json_t *id = size != NULL ? json_pack("{s:s, s:s}", "file", name, "size", size) : json_pack("{s:s}", "file", name);
    json_t *request = json_pack("{s:s}", "command", "pattern");
    json_object_update(request, id);
    json_object_set_new(request, "id", id);
    char *text = json_dumps(request, JSON_COMPACT);
    fprintf(asking->out, "%s\n", text);
    free(text);
    json_decref(request);
}

static bool ask_for_file(struct asking *asking, const char *name)
{
    struct complaints complaints = { NULL, 0, 0 };
    if (!check_file(asking, name))
        return false;
    struct pattern *pattern = pattern_read(name, &complaints);
    complaints_free(&complaints); /* they come again, as the answer */
    if (pattern == NULL) {
        write_request(asking, name, NULL);
        return true;
    }
    for (size_t i = 0; i < pattern->sizes_count; i++)
        write_request(asking, name, pattern->sizes[i].name);
    pattern_free(pattern);
    return true;
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

static bool add_folder(const char *folder, json_t *files, struct failure *failure)
{
    struct dirent **entries = NULL;
    const int count = scandir(folder, &entries, is_pattern_name, by_name);
    const bool slash = folder[strlen(folder) - 1] == '/';
    bool fine = count > 0 || cannot_read(failure, folder, count < 0 ? strerror(errno) : "no file in it ends in .json");
    for (int i = 0; i < count; i++) {
        json_t *name = json_sprintf("%s%s%s", folder, slash ? "" : "/", entries[i]->d_name);
        if (name == NULL && fine)
            fine = cannot_read(failure, folder, "the name of a file in it is not valid UTF-8");
        if (name != NULL)
            json_array_append_new(files, name);
        free(entries[i]);
    }
    free(entries);
    return fine;
}

json_t *pattern_files(json_t *names, struct failure *failure)
{
    json_t *files = json_array();
    bool fine = true;
    for (size_t i = 0; fine && i < json_array_size(names); i++) {
        struct stat found;
        json_t *name = json_array_get(names, i);
        if (stat(json_string_value(name), &found) != 0)
            fine = cannot_read(failure, json_string_value(name), strerror(errno));
        else if (S_ISDIR(found.st_mode))
            fine = add_folder(json_string_value(name), files, failure);
        else
            json_array_append(files, name);
    }
    if (fine)
        return files;
    json_decref(files);
    return NULL;
}

bool ask_for_patterns(json_t *names, struct pattern_requests *requests, struct failure *failure)
{
    *requests = (struct pattern_requests){ .text = NULL };
    json_t *files = pattern_files(names, failure);
    if (files == NULL)
        return false;
    struct asking asking = { open_text(&requests->text, &requests->length), requests, failure };
    bool fine = true;
    for (size_t i = 0; fine && i < json_array_size(files); i++)
        fine = ask_for_file(&asking, json_string_value(json_array_get(files, i)));
    fclose(asking.out);
    json_decref(files);
    return fine;
}
