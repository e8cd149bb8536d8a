/** The figures of an along -> the planner's fields and tables, made once; and the words and numbers they show. */

import type { BlanketFigures } from '../figures.ts';
import { LIES, leastAcross } from '../lies.ts';
import type { BlanketPlan } from '../plan-blanket.ts';
import { borderLines, hexagonSeamLines, sizeLine } from '../plan-lines.ts';
import { MOST_PLACES, MOST_SQUARES } from './planner-state.ts';

export interface PlannerView {
  readonly across: HTMLInputElement;
  readonly down: HTMLInputElement;
  readonly apart: HTMLInputElement;
  readonly counts: ReadonlyMap<string, HTMLInputElement>;
  readonly colours: ReadonlyMap<string, HTMLInputElement>;
  readonly filled: HTMLElement;
  readonly said: HTMLElement;
  readonly drawing: SVGSVGElement;
  readonly legend: HTMLElement;
  readonly yarn: HTMLElement;
  readonly measures: HTMLElement;
  readonly anew: HTMLButtonElement;
  readonly print: HTMLButtonElement;
  readonly reset: HTMLButtonElement;
}

export function makeView(
  place: HTMLElement,
  figures: BlanketFigures,
  pictures: Readonly<Record<string, string | null>>,
): PlannerView {
  const { piece, pieces } = LIES[figures.lie];
  const Pieces = `${pieces.charAt(0).toUpperCase()}${pieces.slice(1)}`;
  const across = numberField(figures.across, leastAcross(figures.lie), MOST_PLACES);
  const down = numberField(figures.down, 1, MOST_PLACES);
  const apart = made('input', { type: 'checkbox' });
  const counts = new Map(figures.squares.map(({ id }) => [id, numberField(0, 0, MOST_SQUARES)]));
  const colours = new Map(figures.yarns.map(({ letter }) => [letter, made('input', { type: 'color' })]));
  const filled = made('p', { class: 'filled', role: 'status' });
  const said = made('p', { class: 'said', role: 'status' });
  const drawing = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  drawing.setAttribute('class', 'plan');
  drawing.setAttribute('role', 'group');
  drawing.setAttribute('aria-label', 'The blanket');
  const view: PlannerView = {
    across,
    down,
    apart,
    counts,
    colours,
    filled,
    said,
    drawing,
    legend: made('ol', { class: 'legend' }),
    yarn: made('tbody', {}),
    measures: made('ul', { class: 'plain' }),
    anew: button('Lay out anew'),
    print: button('Print the plan'),
    reset: button('Start over'),
  };
  const weeks = [...new Set(figures.squares.map(({ week }) => week))];
  place.replaceChildren(
    section('choose', Pieces, [
      ...weeks.map((week) =>
        fieldset(
          `Week ${week}`,
          figures.squares
            .filter((square) => square.week === week)
            .map(({ id, title, covers, make }) =>
              labelled(
                covers > 1 ? `${title}, covers ${covers} places` : title,
                counts.get(id) ?? numberField(0, 0, MOST_SQUARES),
                { picture: pictures[id] ?? null, hint: `${make} fill the week` },
              ),
            ),
        ),
      ),
      fieldset('The blanket', [
        labelled(`${Pieces} across`, across),
        labelled(LIES[figures.lie].offset ? 'Rows' : 'Squares down', down),
        check('No two alike side by side', apart),
      ]),
      filled,
    ]),
    section('blanket', 'The blanket', [
      said,
      drawing,
      made('p', { class: 'quiet no-print' }, [
        `Arrow keys go from ${piece} to ${piece}, Enter picks one up and puts it in the place of another, Escape puts it back. With a pointer, press one and then the other, or drag.`,
      ]),
      made('p', { class: 'buttons' }, [view.anew, view.print, view.reset]),
      view.legend,
    ]),
    section('yarn', 'Yarn', [
      made('section', { class: 'table', tabindex: '0', 'aria-label': 'Yarn by colour' }, [
        made('table', {}, [
          made('thead', {}, [
            made(
              'tr',
              {},
              ['Colour', Pieces, 'Joining', 'Border', 'All', 'Balls'].map((head) =>
                made('th', { scope: 'col' }, [head]),
              ),
            ),
          ]),
          view.yarn,
        ]),
      ]),
    ]),
    section('measures', 'Measures', [view.measures]),
  );
  return view;
}

export function showPlan(
  view: PlannerView,
  figures: BlanketFigures,
  plan: BlanketPlan,
  make: Readonly<Record<string, number>>,
  over: number,
): void {
  view.filled.textContent = fillWords(plan, over, LIES[figures.lie].pieces);
  view.filled.classList.toggle('is-short', plan.filled !== plan.places || over > 0);
  view.yarn.replaceChildren(
    ...plan.yarn.map((yarn) => {
      const name = made('th', { scope: 'row' }, [
        view.colours.get(yarn.letter) ?? '',
        ` ${yarn.letter} ${yarn.colour}`,
      ]);
      view.colours
        .get(yarn.letter)
        ?.setAttribute('aria-label', `Colour of yarn ${yarn.letter}, ${yarn.colour}`);
      const cells = [yarn.squaresM, yarn.joiningM, yarn.borderM, yarn.allM].map((m) => `${m} m`);
      return made('tr', { 'data-yarn': yarn.letter }, [
        name,
        ...[...cells, yarn.balls === null ? '–' : String(yarn.balls)].map((cell) => made('td', {}, [cell])),
      ]);
    }),
  );
  view.legend.replaceChildren(
    ...figures.squares.flatMap(({ id, title }, i) =>
      (make[id] ?? 0) === 0
        ? []
        : [made('li', {}, [made('span', { class: 'number' }, [String(i + 1)]), ` ${title}: ${make[id]}`])],
    ),
  );
  view.measures.replaceChildren(...measureLines(plan).map((line) => made('li', {}, [line])));
}

function fillWords({ places, filled, squares }: BlanketPlan, over: number, pieces: string): string {
  const of = `${filled} of ${places} places filled with ${squares} ${pieces}`;
  if (filled < places) return `${of}: ${places - filled} are empty.`;
  if (filled > places) return `${of}: ${filled - places} too many.`;
  return over === 0 ? `${of}.` : `${of}, but ${over} that cover two places find no two beside one another.`;
}

function measureLines(plan: BlanketPlan): string[] {
  return [sizeLine(plan), ...seamLines(plan), ...borderLines(plan, 'stitches')];
}

function seamLines(plan: BlanketPlan): string[] {
  if (plan.shape === 'hexagons') return hexagonSeamLines(plan, 'stitches');
  const { seams, seamStitches } = plan;
  return [
    `Seams from side to side: ${seams[0].count}, ${seamStitches[0]} stitches each`,
    `Seams from top to bottom: ${seams[1].count}, ${seamStitches[1]} stitches each`,
  ];
}

type Child = Node | string;

function made<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string>>,
  children: readonly Child[] = [],
): HTMLElementTagNameMap[K] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
}

function numberField(value: number, least: number, most: number): HTMLInputElement {
  return made('input', {
    type: 'number',
    inputmode: 'numeric',
    min: String(least),
    max: String(most),
    value: String(value),
  });
}

function button(words: string): HTMLButtonElement {
  return made('button', { type: 'button', class: 'plainer' }, [words]);
}

function labelled(
  words: string,
  field: HTMLInputElement,
  { picture = null, hint = '' }: { readonly picture?: string | null; readonly hint?: string } = {},
): HTMLElement {
  return made('label', { class: picture === null ? 'field' : 'field with-picture' }, [
    ...(picture === null ? [] : [made('img', { src: picture, alt: '', width: '64', height: '64' })]),
    made('span', { class: 'name' }, [
      words,
      ...(hint === '' ? [] : [made('span', { class: 'hint' }, [hint])]),
    ]),
    field,
  ]);
}

function check(words: string, field: HTMLInputElement): HTMLElement {
  return made('label', { class: 'tick' }, [field, made('span', {}, [words])]);
}

function fieldset(legend: string, children: readonly Child[]): HTMLElement {
  return made('fieldset', {}, [made('legend', {}, [legend]), ...children]);
}

function section(id: string, heading: string, children: readonly Child[]): HTMLElement {
  return made('section', { class: `sheet planner-${id}`, 'aria-labelledby': `planner-${id}` }, [
    made('h2', { id: `planner-${id}` }, [heading]),
    made('div', { class: 'body' }, children),
  ]);
}
