/* pdf.h - all pages as PDF.
 *
 * SPDX-License-Identifier: MIT */
#ifndef PDF_H
#define PDF_H

#include "bytes.h"
#include "flow.h"
#include "tags.h"

/* One page, or all where `page` is 0. The same document gives the same bytes. `stop` is asked between pages. */
cairo_status_t pdf_write(struct flow *flow, int page, struct bytes *bytes, bool (*stop)(void));

/* pdf_mend.c: adds what cairo cannot be told: alternative texts of figures, what the heads of a table head, the
 * language, and that the title is shown. Leaves the file as it is where it is not understood. */
void pdf_mend(struct bytes *bytes, const struct tags *tags);

#endif
