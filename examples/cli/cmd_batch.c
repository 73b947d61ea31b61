/* cmd_batch.c - batch: from the words of the command line to a run over many requests.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "args.h"
#include "batch.h"
#include "progress.h"

static const struct word progress_words[] = {
    { "auto", WHEN_AUTO }, { "always", WHEN_ALWAYS }, { "never", WHEN_NEVER }, { NULL, 0 }
};

const struct option_row batch_front_options[] = {
    OPTION_HEADING("What is answered, and how"),
    { "input", KIND_FILES, offsetof(struct batch, inputs), 0, OPTION_OPERAND, NULL,
      "requests, one JSON object a line (standard input); may be repeated" },
    { "patterns", KIND_SWITCH, offsetof(struct batch, patterns), 0, 0, NULL,
      "the files are pattern files, or folders of them (*.json): each is answered as muslin pattern would, once for "
      "each of its sizes" },
    { "jobs", KIND_COUNT, offsetof(struct batch, jobs), 0, 0, NULL,
      "answer so many lines at the same time (as many as there are cores to use); changes no answer" },
    { "progress", KIND_CHOICE, offsetof(struct batch, progress), 0, 0, progress_words,
      "auto (on a terminal, the usual), always or never" },
    OPTION_HEADING("What becomes of the answers"),
    { "output", KIND_FILE, offsetof(struct batch, output), 0, 0, NULL,
      "write to this file; while lines are missing, its name has .part behind it" },
    { "resume", KIND_SWITCH, offsetof(struct batch, resume), 0, 0, NULL,
      "go on where an earlier run on the same input was interrupted; starts at the beginning where there was none" },
    { "force", KIND_SWITCH, offsetof(struct batch, replace), 0, 0, NULL, "replace the file if it exists" },
    OPTION_END
};

static const struct option_row no_options[] = { OPTION_END };

const struct command batch_command = {
    .name = "batch",
    .about = "many requests in, many answers out, one JSON object a line",
    .operands = "[FILE...]",
    .examples = "  muslin batch requests.jsonl --output answers.jsonl\n"
                "  muslin batch requests.jsonl --output answers.jsonl --resume\n"
                "  muslin batch --patterns examples/patterns --output patterns.jsonl\n"
                "\n"
                "A request names its command and its options: {\"command\": \"plan\", \"strips\": 42, \"columns\": 3, "
                "\"rows\": 3}. An \"id\" comes back with its answer. A line that fails gets an \"error\" and loses "
                "nothing else. Blank lines are passed over. Ctrl-C keeps the finished lines in FILE.part, and --resume "
                "goes on with them.",
    .options = no_options
};

static bool check_batch(const struct batch *batch, struct failure *failure)
{
    if (batch->jobs < 0 || batch->jobs > JOBS_MAX) {
        failure_say(failure, "jobs", "Give 1 to %d, or 0 for as many as there are cores to use.", JOBS_MAX);
        return false;
    }
    if (batch->patterns && batch->inputs == NULL) {
        failure_say(failure, "patterns", "Name pattern files, or folders of them: muslin batch --patterns FOLDER.");
        return false;
    }
    if (batch->resume && batch->output == NULL) {
        failure_say(failure, "resume", "Name the file to go on with: --output FILE.");
        return false;
    }
    return true;
}

static bool batch_of(const struct args *args, struct batch *batch, struct failure *failure)
{
    *batch = (struct batch){ .progress = WHEN_AUTO, .defaults = usual_common };
    batch->defaults.among_others = true;
    return read_by_table(args->front, batch_front_options, batch, failure) &&
           read_common(args->request, &batch->defaults, failure) && check_batch(batch, failure);
}

enum exit_code run_batch_command(int argc, char **argv)
{
    struct args args;
    struct batch batch;
    struct failure failure;
    enum exit_code code = EXIT_WRONG_INPUT;
    if (read_args(&batch_command, batch_front_options, argc, argv, &args, &failure) &&
        batch_of(&args, &batch, &failure))
        code = run_batch(&batch, &failure);
    if (code > EXIT_NO_ANSWER)
        tell_failure(argv[0], &failure);
    json_decref(args.request);
    json_decref(args.front);
    return code;
}
