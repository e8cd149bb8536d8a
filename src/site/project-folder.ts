/** Where Rowfold itself stands. */

import { fileURLToPath } from 'node:url';

/** The folder that holds `layouts/`, `eleventy.config.ts` and `.cache/`. */
export const PROJECT_FOLDER = fileURLToPath(new URL('../../', import.meta.url));
