/** The booklet of twelve pages laid out and written once, in a process of its own: the file to write is named behind it. */

import { writeFileSync } from 'node:fs';
import { printTwelve } from './print-twelve.ts';

writeFileSync(process.argv[2] ?? 'twelve.pdf', await printTwelve());
