/** What is out of an along -> its list of yarn: for what is out so far, and once all of it is, for the whole blanket and for any mix. */

import { LIES } from '../along/lies.ts';
import { type BlanketPlan, mostOfAny } from '../along/plan-blanket.ts';
import { weeksOut } from '../along/release.ts';
import { yarnWeight } from '../measure/yarn-weights.ts';
import type { Yarn } from '../pattern/pattern.ts';
import { printG, printM } from '../units.ts';
import type { AlongTotals } from './along-page-data.ts';
import type { AlongSite } from './along-site.ts';
import { balls } from './facts.ts';
import { swatch } from './swatch.ts';

export function alongTotals({ released, figures, plan }: AlongSite): AlongTotals {
  const { along, complete } = released;
  const most = mostOfAny(figures);
  const out = weeksOut(released).length;
  return {
    lines: along.yarns.map((yarn) => ({
      letter: yarn.letter,
      text: yarnWords(yarn),
      amount: amountWords(yarn, plan, most.get(yarn.letter) ?? 0, complete),
      swatch: swatch(yarn.hex),
    })),
    note: complete
      ? 'First for whoever takes the first choice of every week; what is enough for any mix of choices stands behind it. Joining and border are counted in.'
      : out === 0
        ? `The lengths are those of joining and border; what the ${LIES[along.blanket.lie].pieces} take is told as they come out.`
        : `The lengths are those of ${out === 1 ? 'the week' : `the ${out} weeks`} out so far, with joining and border. What later weeks take is told as they come out.`,
  };
}

function yarnWords(yarn: Yarn): string {
  const weight = yarnWeight(yarn.weight);
  const ball =
    yarn.ballLengthM === null
      ? []
      : [`${printM(yarn.ballLengthM)} and ${printG(yarn.ballMassG ?? 0)} a ball`];
  return [
    yarn.colour,
    `${weight?.name.toLowerCase() ?? 'weight'} (${yarn.weight})`,
    yarn.fibre,
    ...ball,
  ].join(', ');
}

function amountWords(
  { letter, ballLengthM, balls: listed }: Yarn,
  plan: BlanketPlan,
  most: number,
  complete: boolean,
): string {
  const total = plan.yarn.find((one) => one.letter === letter);
  const length = printM(total?.allM ?? 0);
  const told = listed?.[0];
  const announced = told === undefined ? '' : ` Announced for the whole blanket: ${balls(told)}.`;
  if (!complete) return `${length} so far.${announced}`;
  const enough =
    ballLengthM === null ? printM(most) : `${balls(Math.ceil(most / ballLengthM))} (${printM(most)})`;
  const own = total?.balls == null ? length : `${balls(total.balls)} (${length})`;
  return `${own}; for any mix ${enough}.`;
}
