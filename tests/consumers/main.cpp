// main.cpp - a C++ consumer.
//
// SPDX-License-Identifier: MIT
#include "consumer.h"

int main()
{
    return consume("C++");
}
