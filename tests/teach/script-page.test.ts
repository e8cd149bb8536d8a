/** A script set for print: valid HTML that asks for nothing else, whatever the pattern is called. */

import { HtmlValidate } from 'html-validate';
import { expect, test } from 'vitest';
import { pausesOf } from '../../src/teach/pauses.ts';
import { scriptOf } from '../../src/teach/script.ts';
import { scriptPage } from '../../src/teach/script-page.ts';
import { compiledFile, lessonFrom, lessonOf } from './lesson.ts';

const validator = new HtmlValidate({
  root: true,
  extends: ['html-validate:standard', 'html-validate:a11y'],
  rules: { 'no-trailing-whitespace': 'off', 'attr-quotes': 'off', 'long-title': 'off' },
});

async function faultsOf(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) => messages.map(({ line, message }) => `${line}: ${message}`));
}

test.each(['lantern-square', 'sandbar-square'])('of %s is valid, with every pause', async (slug) => {
  const lesson = lessonOf(compiledFile(`patterns/${slug}/pattern.yaml`), 1);
  const pauses = pausesOf(lesson);
  const html = scriptPage(scriptOf(lesson), pauses);
  expect(await faultsOf(html)).toEqual([]);
  expect([...html.matchAll(/<li>/g)]).toHaveLength(pauses.length);
  expect(html).not.toMatch(/<script|<link|src=|url\(|https?:/);
});

test('keeps markup in a name from being any', async () => {
  const lesson = lessonFrom(
    'Ch 4.\nRow 1: Sc in 2nd ch from hook and in each ch across.',
    'notes: Pin <b>flat</b> & dry.\n',
  );
  const html = scriptPage(scriptOf(lesson), []);
  expect(html).toContain('Pin &lt;b&gt;flat&lt;');
  expect(await faultsOf(html)).toEqual([]);
});
