/** Every benchmark, one after another, in the engine that runs the program, with nothing between. */

import { drawCharts } from './draw-chart.ts';
import { printBooklets } from './print-booklet.ts';
import { readLines } from './read-lines.ts';
import { workStitches } from './work-stitches.ts';

readLines();
workStitches();
drawCharts();
await printBooklets();
