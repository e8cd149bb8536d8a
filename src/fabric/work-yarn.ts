/** Yarn changes: from here on the stitches are in another colour, joined where the text says. */

import type { Place, YarnStep } from '../notation/tree.ts';
import { addStitch } from './builder.ts';
import { FLAG } from './fabric.ts';
import { passPlace, standAt } from './find-site.ts';
import { standInGap } from './gap-site.ts';
import { intoOf, makeInto, makeStitch, nodesOf } from './make-stitch.ts';
import { singleSite } from './place-sites.ts';
import type { Site } from './site.ts';
import { goTo, workAlong } from './work-edge.ts';
import type { Worker } from './worker.ts';

/** Index of a yarn's letter among those used so far, taken up when new. */
export function yarnIndex(worker: Worker, letter: string): number {
  const known = worker.builder.yarns.indexOf(letter);
  if (known >= 0) return known;
  worker.builder.yarns.push(letter);
  return worker.builder.yarns.length - 1;
}

/** The place the yarn is joined at, which is where a round begins. */
function joinAt(worker: Worker, sites: Site[], place: Place): Site | null {
  if (place.kind === 'gap') return standInGap(worker, place);
  if (!goTo(worker, place)) return null;
  const { next } = worker;
  const site = singleSite(worker, place);
  if (site === null) return null;
  const index = worker.last;
  if (worker.round) standAt(worker, worker.sites ?? sites, index);
  else worker.next = Math.max(next, index);
  worker.last = worker.round ? 0 : index;
  return site;
}

export function workYarn(worker: Worker, step: YarnStep): boolean {
  if (step.action === 'drop' || step.action === 'carry') return true;
  // A yarn that is left to the maker is reckoned with the one before it.
  if (step.yarn !== null) worker.yarn = yarnIndex(worker, step.yarn);
  if (step.action !== 'join' || step.place === null || worker.sites === null) return true;
  const toRowEnds = 'what' in step.place && step.place.what.kind === 'row-end';
  if (
    toRowEnds &&
    worker.sites[0]?.kind !== 'row end' &&
    !workAlong(worker, { kind: 'along', edge: 'row ends', span: step.span })
  )
    return false;
  const { passed } = worker;
  const site = joinAt(worker, worker.sites, step.place);
  if (site === null) return false;
  const { stitch } = step;
  if (stitch === null || (stitch.kind === 'stitch' && stitch.id === 'sl-st')) {
    // A skipped stitch that yarn is joined in is still to be worked.
    worker.passed = passed;
    const where = intoOf(site);
    const into = nodesOf(worker, site);
    addStitch(worker.builder, {
      id: 'sl-st',
      countsAs: null,
      row: worker.row,
      yarn: worker.yarn,
      where,
      loop: 0,
      flags: FLAG.join,
      group: worker.group,
      into,
    });
    return true;
  }
  passPlace(worker, worker.last);
  if (stitch.kind === 'stitch') return makeStitch(worker, stitch.id, [site], 0, step.span);
  const special = worker.specials.get(stitch.name);
  return special === undefined || makeInto(worker, special.steps, site, special.name, worker.workSteps);
}
