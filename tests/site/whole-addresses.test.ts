/** Where the site stands is known: each page goes by one address, and the map of the site has each once. */

import { beforeAll, describe, expect, test } from 'vitest';
import { sitePages } from '../../src/site/site-pages.ts';
import { siteMap, withWholeAddresses } from '../../src/site/whole-addresses.ts';
import { type DemoSite, demoSite, text } from './demo-site.ts';

const TOP = 'https://example.org/crochet/';
let site: DemoSite;
beforeAll(async () => {
  site = await demoSite();
});
const pages = () => sitePages(site.collection.map(({ compiled }) => compiled));

test('without an address nothing is made up', () => {
  const plain = pages();
  expect(withWholeAddresses(plain, null)).toBe(plain);
});

test('a page in other words goes by the address of the size, every other page by its own', () => {
  const { list, patterns, sizes } = withWholeAddresses(pages(), TOP);
  expect(list.canonical).toBe(TOP);
  expect(patterns.find(({ file }) => file === 'sandbar-square/index.html')?.canonical).toBe(
    `${TOP}sandbar-square/`,
  );
  const of = (file: string) => sizes.find((page) => page.file === file)?.canonical;
  expect(of('sandbar-square/small/index.html')).toBe(`${TOP}sandbar-square/small/`);
  // It is written in US terms, so that page and the size's own say the same.
  expect(of('sandbar-square/small/us/index.html')).toBe(`${TOP}sandbar-square/small/`);
  expect(of('sandbar-square/small/uk/index.html')).toBe(`${TOP}sandbar-square/small/uk/`);
});

describe('the map of the site', () => {
  const found = () =>
    [...text(siteMap(withWholeAddresses(pages(), TOP), TOP).content).matchAll(/<loc>([^<]*)<\/loc>/g)].map(
      ([, address = '']) => address,
    );

  test('names pages that are there, each once', () => {
    const addresses = found();
    expect(addresses.length).toBeGreaterThan(40);
    expect(new Set(addresses).size).toBe(addresses.length);
    for (const address of addresses)
      expect([...site.pages.keys()]).toContain(`${decodeURIComponent(address.slice(TOP.length))}index.html`);
  });

  test('leaves out pages that say what another says', () => {
    expect(found()).not.toContain(`${TOP}sandbar-square/small/us/`);
    expect(found()).toContain(`${TOP}sandbar-square/small/`);
  });
});

test('what search engines read of a size is the rows and counts that stand in its page', () => {
  let looked = 0;
  for (const { compiled } of site.collection)
    for (const size of compiled.sizes) {
      const html = site.pages.get(`${compiled.slug}/${size.slug}/index.html`) ?? '';
      const json = /<script type="application\/ld\+json">([^<]*)<\/script>/.exec(html)?.[1] ?? '';
      const data = JSON.parse(json);
      expect([data['@type'], data.name]).toEqual(['HowTo', `${compiled.pattern?.title}, ${size.size.name}`]);
      const steps = data.step.flatMap((part: { itemListElement: { text: string }[] }) =>
        part.itemListElement.map((step) => step.text),
      );
      const own = compiled.pattern?.terms === 'UK' ? 'uk' : 'us';
      const lines = size.words[own].parts.flatMap((part) => part.lines);
      expect(steps).toEqual(
        lines.map((line) => (line.count === null ? line.text : `${line.text} (${line.count})`)),
      );
      looked += 1;
    }
  expect(looked).toBeGreaterThan(10);
});
