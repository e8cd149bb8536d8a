import path from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { HtmlValidate } from 'html-validate';
import { beforeAll, describe, expect, test } from 'vitest';
import { type DemoSite, demoSite, text } from './demo-site.ts';

let site: DemoSite;
beforeAll(async () => {
  site = await demoSite();
});

/** Links out of the site, to a film and nothing else, which say nothing of where they were followed. */
const FILM_LINK = /<a href="(https:\/\/films\.example\.org\/[^"]*)" rel="noreferrer">/g;

/** Every other address in a page: of links, style sheets, icons, pictures and drawings. */
function addressesIn(page: string): string[] {
  const html = page.replaceAll(FILM_LINK, '<a>');
  return [...html.matchAll(/\s(href|src|srcset|action|poster|xlink:href)="([^"]*)"/g)].flatMap(
    ([, name, value = '']) =>
      // Several in one, each with its width.
      name === 'srcset' ? value.split(', ').map((one) => one.replace(/ \d+w$/, '')) : value,
  );
}

/** The pages, each told by its file where a check fails. */
function eachPage(check: (html: string, file: string) => void): void {
  expect(site.pages.size).toBeGreaterThan(10);
  for (const [file, html] of site.pages) check(html, file);
}

test('the demo patterns have no errors, or the pages would say nothing', () => {
  const errors = site.collection.flatMap(({ compiled }) =>
    compiled.diagnostics.filter(({ severity }) => severity === 'error'),
  );
  expect(errors).toEqual([]);
});

test('every page is valid HTML', async () => {
  const validator = new HtmlValidate({
    root: true,
    extends: ['html-validate:standard', 'html-validate:a11y'],
    rules: {
      // A page is a document of its own; long lines and the order of attributes are no faults.
      'long-title': 'off',
      'no-trailing-whitespace': 'off',
      // Written without quotes or with: the drawings write some attributes with single quotes inside.
      'attr-quotes': 'off',
    },
  });
  for (const [file, html] of site.pages) {
    const report = await validator.validateString(html, file);
    const messages = report.results.flatMap((result) =>
      result.messages.map(({ line, message, ruleId }) => `${file}:${line} ${ruleId}: ${message}`),
    );
    expect(messages).toEqual([]);
  }
});

test('a film is linked to beside its rows, and from no page of a pattern without one', () => {
  const linked = [...site.pages].flatMap(([file, html]) =>
    [...html.matchAll(FILM_LINK)].length > 0 ? [file.split('/')[0]] : [],
  );
  expect([...new Set(linked)]).toEqual(['lantern-square', 'sandbar-square']);
  const page = site.pages.get('lantern-square/six-rounds/index.html') ?? '';
  expect(page).toContain(
    '<a href="https://films.example.org/lantern-square#t=640" rel="noreferrer">Watch round 3</a>',
  );
});

describe('a page asks nothing of any other host', () => {
  test('no address is absolute, so the site works in any folder', () => {
    eachPage((html, file) => {
      for (const address of addressesIn(html)) {
        expect(address, file).not.toMatch(/^(?:[a-z][a-z0-9+.-]*:|\/)/i);
      }
    });
  });

  test('no page has a script of its own, a style attribute or a handler, and its policy allows none', () => {
    eachPage((html, file) => {
      const besides = html
        // The site's own scripts, from their files; and data, which no browser runs.
        .replaceAll(
          /<script(?: type="module")? src="(?:\.\.?\/)+site-files\/[a-z-]+\.js"(?: async)?><\/script>/g,
          '',
        )
        .replaceAll(/<script type="application\/(?:ld\+)?json"(?: id="[a-z-]+")?>[^<]*<\/script>/g, '');
      expect(besides, file).not.toMatch(/<script|<iframe|<object|<embed|\son[a-z]+="|\sstyle="|javascript:/i);
      const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? '';
      expect(policy, file).toMatch(/default-src 'none'/);
      expect(policy, file).not.toMatch(/unsafe|https?:|\*/);
    });
  });

  test('nor has the style sheet an address outside', () => {
    const css = text(site.files.get('site-files/site.css') ?? '');
    const addresses = [...css.matchAll(/url\("([^"]*)"\)/g)].map((found) => found[1] ?? '');
    expect(addresses).toContain('title.woff');
    for (const address of addresses) expect([...site.files.keys()]).toContain(`site-files/${address}`);
  });
});

test('every link leads to a page or file of the site, and every fragment to a place in it', () => {
  const written = new Set([
    ...site.pages.keys(),
    ...site.files.keys(),
    'pattern.schema.json',
    ...site.sizeFiles.keys(),
  ]);
  eachPage((html, file) => {
    for (const address of addressesIn(html)) {
      const [asked = '', fragment] = address.split('#', 2);
      const [way = ''] = asked.split('?');
      // The page of a missing address does not know where it stands; it goes one level up.
      if (file === '404.html') continue;
      const joined = path.posix.join(path.posix.dirname(file), decodeURIComponent(way));
      const target =
        way === ''
          ? file
          : /\/$|^\.\/?$/.test(joined) || joined === '.'
            ? path.posix.join(joined, 'index.html')
            : joined;
      expect([...written], `${file} -> ${address}`).toContain(target);
      if (fragment !== undefined) {
        const there = target === file ? html : (site.pages.get(target) ?? '');
        expect(there, `${file} -> ${address}`).toContain(`id="${fragment}"`);
      }
    }
  });
});

test('no id stands twice in a page', () => {
  eachPage((html, file) => {
    const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map((found) => found[1]);
    expect(ids.length, file).toBe(new Set(ids).size);
  });
});

test('a page weighs less than 60 kB compressed, and all it needs besides less than 80 kB', () => {
  eachPage((html, file) => {
    expect(gzipSync(html).length, file).toBeLessThan(60_000);
  });
  // Fonts are compressed already.
  const shared = [...site.files].filter(([file]) => !/\.(?:txt|js|ttf)$/.test(file));
  const weight = shared.reduce((sum, [, content]) => sum + gzipSync(content).length, 0);
  expect(weight).toBeLessThan(80_000);
});

describe('a size says what it is', () => {
  test('each row of its instructions has a tick box with its label, and its count stands out', () => {
    for (const { compiled } of site.collection) {
      for (const size of compiled.sizes) {
        for (const dialect of ['us', 'uk', 'us-full', 'uk-full'] as const) {
          const html = site.pages.get(`${compiled.slug}/${size.slug}/${dialect}/index.html`) ?? '';
          const lines = size.words[dialect].parts.flatMap((part) => part.lines);
          expect(html.match(/<input type="checkbox">/g)).toHaveLength(lines.length);
          const counts = lines.filter(({ count }) => count !== null);
          expect(html.match(/<strong class="count">/g) ?? []).toHaveLength(counts.length);
        }
      }
    }
  });

  test("the size's own address is in the pattern's terms", () => {
    for (const { compiled } of site.collection) {
      const terms = compiled.pattern?.terms ?? 'US';
      for (const size of compiled.sizes) {
        const html = site.pages.get(`${compiled.slug}/${size.slug}/index.html`) ?? '';
        expect(html).toContain(`<p>${terms} terms.</p>`);
      }
    }
  });

  test('its charts have a title and a text alternative, and name the written rows', () => {
    let charts = 0;
    for (const { compiled } of site.collection) {
      for (const size of compiled.sizes) {
        const html = site.pages.get(`${compiled.slug}/${size.slug}/us/index.html`) ?? '';
        for (const { scene } of size.charts.US) {
          charts++;
          expect(html).toContain(scene.alternative.replaceAll('&', '&amp;').slice(0, 30));
        }
        expect(html.match(/in words in the <a href="#[^"]+-rows">written rows<\/a>/g) ?? []).toHaveLength(
          size.charts.US.length,
        );
      }
    }
    expect(charts).toBeGreaterThan(0);
  });
});

test('what a designer writes is shown as written, never read as markup', async () => {
  const { compilePattern } = await import('../../src/compile.ts');
  const { runEleventy } = await import('../../src/site/run-eleventy.ts');
  const { sitePages } = await import('../../src/site/site-pages.ts');
  const { starterPattern } = await import('../../src/commands/starter-pattern.ts');
  const source = { file: 'pattern.yaml', text: starterPattern('<b>Tom & "Jerry"</b> {{ 7 * 7 }}') };
  const pages = await runEleventy(sitePages([compilePattern(source, 'two words & more')]));
  const page = text(pages.find(({ file }) => file === 'two words & more/index.html')?.content ?? '');
  expect(page).toContain('&lt;b&gt;Tom &amp; &quot;Jerry&quot;&lt;/b&gt; {{ 7 * 7 }}');
  const list = text(pages.find(({ file }) => file === 'index.html')?.content ?? '');
  expect(list).toContain('href="./two%20words%20%26%20more/"');
});

test('what the page of a size of her own loads first weighs less than 88 kB compressed; charts, faults and booklets come when wanted', () => {
  const script = (name: string): string => text(site.files.get(`site-files/${name}`) ?? '');
  const first = new Set<string>();
  const load = (name: string): void => {
    if (first.has(name)) return;
    first.add(name);
    for (const [, part = ''] of script(name).matchAll(/(?:from|import)\s*"\.\/([\w.-]+\.js)"/g)) load(part);
  };
  load('own-page.js');
  const weight = [...first].reduce((sum, name) => sum + brotliCompressSync(script(name)).length, 0);
  expect(weight).toBeGreaterThan(10_000);
  expect(weight).toBeLessThan(88_000);
  const all = [...site.files.keys()].filter((file) => file.endsWith('.js'));
  expect(all.length).toBeGreaterThan(first.size);
});
