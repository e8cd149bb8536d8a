/** A place in, the words that lead to it out: `in next 3 sts`, `over next 2 sts`, `in top of beg ch-3`. */

import type { Num } from '../notation/num.ts';
import { ordinal } from '../notation/ordinal.ts';
import type { Loop, Place, What } from '../notation/tree.ts';
import { ownWords } from './own-words.ts';
import { form, printSpecial, printWhat } from './print-name.ts';
import { isMany, printNumber } from './print-number.ts';
import { printStop } from './print-stop.ts';
import type { Voice } from './voice.ts';

/** `lead` is "in", "over" for a decrease, "around" for a post. */
export function printPlace(place: Place, loop: Loop, lead: 'in' | 'over' | 'around', voice: Voice): string {
  const where = placeWords(place, voice);
  if (loop === 'both') return `${lead} ${where}`;
  return `${lead} ${printLoop(loop, voice)} of ${where}`;
}

export function printLoop(loop: Exclude<Loop, 'both'>, voice: Voice): string {
  if (loop === 'third') return '3rd loop';
  return loop === 'back' ? voice.phrases.backLoop : voice.phrases.frontLoop;
}

/** `3 sts`, or `st` where no number was written. */
export function printAmount(n: Num | null, what: What, voice: Voice): string {
  if (n === null) return printWhat(what, false, voice);
  return `${printNumber(n, voice.numbers)} ${printWhat(what, isMany(n, voice.numbers), voice)}`;
}

function ofRow({ ofRow }: Extract<Place, { kind: 'next' | 'first' }>): string {
  return ofRow === undefined ? '' : ` of ${ofRow.unit === 'row' ? 'Row' : 'Rnd'} ${ofRow.number}`;
}

function placeWords(place: Place, voice: Voice): string {
  const { phrases } = voice;
  switch (place.kind) {
    case 'next':
      if (place.what.kind === 'space' && place.what.of !== undefined)
        return `${spaceWords(place.what, voice)} of next ${printSpecial(place.what.of, false, voice)}`;
      return `${place.each ? 'each of ' : ''}next ${printAmount(place.n, place.what, voice)}${place.left === true ? ' left unworked' : ''}${ofRow(place)}`;
    case 'each': {
      const { what } = place;
      const each =
        place.every === undefined
          ? 'each'
          : place.every === 2
            ? 'every other'
            : `every ${ordinal(place.every)}`;
      if (what.kind === 'space' && what.of !== undefined)
        return `${spaceWords(what, voice)} of ${each} ${printSpecial(what.of, false, voice)} ${printStop(place.stop, voice)}`;
      return `${each} ${printWhat(what, false, voice)} ${printStop(place.stop, voice)}`;
    }
    case 'same':
      return `same ${printWhat(place.what, false, voice)}${place.asJoin ? ' as joining' : ''}`;
    case 'just-made':
      return `${printWhat(place.what, false, voice)} just made`;
    case 'first':
      return `first ${printAmount(place.n, place.what, voice)}${ofRow(place)}`;
    case 'last':
      if (place.what.kind === 'space' && place.what.of !== undefined)
        return `${spaceWords(place.what, voice)} of last ${printSpecial(place.what.of, false, voice)}`;
      return `last ${printAmount(place.n, place.what, voice)}`;
    case 'any':
      return `any ${printWhat(place.what, false, voice)}`;
    case 'from-hook':
      return `${ordinals(place.nth, voice)} ${phrases.ch.one} from hook`;
    case 'of-chain': {
      if (place.space === true) return `${chainName(place.where, place.chains, voice)} ${phrases.sp.one}`;
      const head = place.nth === null ? 'top' : `${ordinal(place.nth)} ${phrases.ch.one}`;
      return `${head} of ${chainName(place.where, place.chains, voice)}`;
    }
    case 'of-special': {
      const which = place.nth === 'center' ? phrases.centre : ordinal(place.nth);
      return `${which} ${printWhat(place.what, false, voice)} of ${place.last ? 'last' : 'next'} ${printSpecial(place.special, false, voice)}`;
    }
    case 'of-group': {
      const which = place.nth === 'center' ? phrases.centre : ordinal(place.nth);
      const what = (many: boolean): string => printWhat(place.what, many, voice);
      if (place.shape !== undefined) return `${which} ${what(false)} of next ${place.shape}`;
      return `${which} ${what(false)} of ${place.any === true ? 'any' : 'next'} ${place.any === true ? `${place.n}-${what(false)} group` : `${place.n} ${what(true)}`}`;
    }
    case 'of-space': {
      const which = place.nth === 'center' ? phrases.centre : ordinal(place.nth);
      const space = printWhat({ kind: 'space', chains: place.chains, corner: false }, false, voice);
      return `${which} ${phrases.ch.one} of next ${space}`;
    }
    case 'last-made':
      if (place.stem === true) return `middle of post of ${printWhat(place.what, false, voice)} just made`;
      return `top of last ${printWhat(place.what, false, voice)} made`;
    case 'row-edge':
    case 'left-over':
      return ownWords(place.said, voice);
    case 'passed':
      return passedWords(place, voice);
    case 'gap':
      if (place.first === true) return `between first and 2nd ${printWhat(place.what, true, voice)}`;
      if (place.each !== undefined && place.apart !== null)
        return `${voice.phrases.sp.one} between each ${printAmount(place.apart, place.what, voice)} ${printStop(place.each, voice)}`;
      if (place.shape !== undefined)
        return `${voice.phrases.sp.one} between this ${place.shape} and the next`;
      if (place.beforeChain === true)
        return `${voice.phrases.sp.one} between last ${printWhat(place.what, false, voice)} and ${chainName('turning', null, voice)}`;
      return place.apart === null
        ? `${voice.phrases.sp.one} before next ${printWhat(place.what, false, voice)}`
        : `${voice.phrases.sp.one} between next ${printAmount(place.apart, place.what, voice)}`;
    case 'ring':
      return place.magic ? 'magic ring' : 'ring';
    case 'below': {
      const unit = form(place.unit === 'row' ? phrases.row : phrases.round, place.rows !== 1).toLowerCase();
      if (place.uncovered === true)
        return `${printWhat(place.what, false, voice)} ${place.rows} ${unit} below`;
      return `${belowWords(place, voice)} ${place.rows} ${unit} below`;
    }
  }
}

/** The space itself, without the special stitch it belongs to. */
function spaceWords({ chains, corner }: Extract<What, { kind: 'space' }>, voice: Voice): string {
  return printWhat({ kind: 'space', chains, corner }, false, voice);
}

/** `skipped st`, `2nd skipped st`, `2 skipped sts`. */
function passedWords({ nth, n, of, ofRow, what }: Extract<Place, { kind: 'passed' }>, voice: Voice): string {
  if (n !== undefined)
    return `${printNumber(n, voice.numbers)} skipped ${printWhat(what, isMany(n, voice.numbers), voice)}`;
  if (of !== undefined && nth !== undefined)
    return `${nth === 1 ? 'first' : ordinal(nth)} of ${printNumber(of, voice.numbers)} skipped ${printWhat(what, true, voice)}`;
  if (ofRow !== undefined) return `first skipped ${printWhat(what, false, voice)} of Rnd ${ofRow}`;
  return `${nth === undefined ? '' : `${ordinal(nth)} `}skipped ${printWhat(what, false, voice)}`;
}

/** `next 2 sc`, `skipped sc`, `next 2 skipped sc`. */
function belowWords({ n, pick, what }: Extract<Place, { kind: 'below' }>, voice: Voice): string {
  if (pick === 'next') return `next ${printAmount(n, what, voice)}`;
  const skipped = `skipped ${printWhat(what, n !== null && isMany(n, voice.numbers), voice)}`;
  return n === null ? skipped : `next ${printNumber(n, voice.numbers)} ${skipped}`;
}

/** `beg ch-3`, `tch`, `turning ch-3`. */
function chainName(where: 'beginning' | 'turning', chains: number | null, voice: Voice): string {
  const { phrases } = voice;
  if (where === 'turning')
    return chains === null ? phrases.turningChain : `turning ${phrases.chainsOf(chains)}`;
  return `${phrases.beginning} ${chains === null ? phrases.ch.one : phrases.chainsOf(chains)}`;
}

function ordinals(n: Num, voice: Voice): string {
  return printNumber(n, voice.numbers).replace(/\d+/g, (digits) => ordinal(Number(digits)));
}
