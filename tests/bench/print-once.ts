/**
 * The booklet of twelve pages laid out and written once, in a process of its own, as `rowfold booklet` does it: the file to
 * write is named behind it, and the folder where words shaped before are kept.
 */

import { writeFileSync } from 'node:fs';
import { readFontFiles } from '../../src/site/font-files.ts';
import { keepWords, recallWords } from '../../src/site/kept-words.ts';
import { printTwelve } from './print-twelve.ts';

const [file = 'twelve.pdf', store = ''] = process.argv.slice(2);
const fonts = readFontFiles();
recallWords(fonts, store);
writeFileSync(file, await printTwelve());
keepWords(fonts, store);
