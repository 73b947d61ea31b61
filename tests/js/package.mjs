// Where the package lies that is tested: $MUSLIN_JS, or the one in the source with a muslin.wasm beside it.
//
// SPDX-License-Identifier: MIT
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

export const home = process.env.MUSLIN_JS ?? fileURLToPath(new URL("../../bindings/js", import.meta.url));

/** One of its modules. */
export const part = (name) => import(pathToFileURL(join(home, "muslin", name)));
