/** One size worded -> what search engines read of it: a `HowTo` with its steps and supplies (schema.org), as JSON-LD. */

import type { Pattern } from '../pattern/pattern.ts';
import type { WordedPattern } from '../wording/words.ts';
import type { Markup, Materials } from './page-data.ts';

export interface HowToFrom {
  readonly pattern: Pattern;
  readonly sizeName: string;
  readonly words: WordedPattern;
  readonly materials: Materials;
  readonly language: 'en-US' | 'en-GB';
}

/** With nothing in it that could end the element it stands in. */
export function howTo({ pattern, sizeName, words, materials, language }: HowToFrom): Markup {
  const sections = words.parts.map(({ name, lines }) => ({
    '@type': 'HowToSection',
    name,
    itemListElement: lines.map(({ label, text, count }) => ({
      '@type': 'HowToStep',
      ...(label === null ? {} : { name: label }),
      text: count === null ? text : `${text} (${count})`,
    })),
  }));
  const data = {
    '@context': 'https://schema.org',
    '@type': 'HowTo',
    name: `${pattern.title}, ${sizeName}`,
    ...(pattern.about === '' ? {} : { description: pattern.about }),
    inLanguage: language,
    ...(pattern.designer === null ? {} : { author: { '@type': 'Person', name: pattern.designer } }),
    ...(pattern.licence === null ? {} : { license: pattern.licence }),
    ...(pattern.date === null ? {} : { dateModified: pattern.date }),
    supply: materials.yarns.map(({ text, amount }) => ({
      '@type': 'HowToSupply',
      name: amount === null ? text : `${text}: ${amount}`,
    })),
    tool: materials.tools.map((name) => ({ '@type': 'HowToTool', name })),
    step: sections,
  };
  return JSON.stringify(data).replaceAll('<', '\\u003c');
}
