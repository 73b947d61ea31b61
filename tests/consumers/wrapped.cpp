// wrapped.cpp - a C++ consumer of the C++ headers.
//
// SPDX-License-Identifier: MIT
#include <muslin/muslin.hpp>

#include <iostream>

using namespace muslin::literals;

int main()
{
    if (muslin::version() != MUSLIN_VERSION || muslin::seam_cut_from_finished(6_in) != 6.5_in)
        return 1;
    muslin::quilt quilt = muslin::quilt::create();
    std::cout << "C++ headers consumer: muslin " << muslin::version_text() << ", "
              << muslin::length_format(6.5_in).text << ", " << quilt.counts().measures << " measures\n";
    return 0;
}
