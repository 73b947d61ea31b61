// The form with exceptions, linked into one program with expecting.cpp: the same names, other results.
//
// SPDX-License-Identifier: MIT
#include <muslin/muslin.hpp>

using namespace muslin::literals;

int throwing()
{
    int wrong = muslin::seam_cut_from_finished(6_in) == 6.5_in ? 0 : 1;
    try {
        (void)muslin::length_parse("2 1/2 inch or so");
        wrong++;
    } catch (const muslin::error &failed) {
        wrong += failed.status() == muslin::status::text_trailing ? 0 : 1;
    }
    return wrong;
}
