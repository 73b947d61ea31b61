/* main.c - a C consumer; WHO says how it was built.
 *
 * SPDX-License-Identifier: MIT */
#include "consumer.h"

int main(void)
{
    return consume(WHO);
}
