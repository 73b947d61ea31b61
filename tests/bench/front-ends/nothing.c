/* nothing.c - the least that a program takes: what start-up is compared with.
 *
 * SPDX-License-Identifier: MIT */
int main(void)
{
    return 0;
}
