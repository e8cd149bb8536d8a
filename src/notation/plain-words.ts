/** Plain words of a sentence: none is a stitch or meant for one, so a sentence of them is quoted as it stands. */
import { WordSet } from './word-set.ts';

export const PLAIN_WORDS = new WordSet(
  (
    'a about above according add after again all also although always an another any are as at be because been ' +
    'before begins being below both but by came can carried carry come cool count counted counting counts could ' +
    'depending desired did does done each either enough every few for form forming forms from gently get give given ' +
    'go goes going had has have having he her here hide his hold holding how i if in inside into is it its just keep ' +
    'know large leave left less like little long longer look looks lose made make makes making many may maybe mean ' +
    'means meet might more most much must my need needed needs neither never no not now of often on once one only or ' +
    'other otherwise our out over own per pick pieces please put rather really remember right same see seem she ' +
    'should simply since small so some soon start started starting still stop such sure take than that the their ' +
    'them then there these they this those though through thus to too toward towards two until up upon use used ' +
    'using usually very want was way we well were what when where whether which while who whole why will with ' +
    'within without wool worked would yet you your yours'
  ).split(' '),
);
