/** The demo site's pages -> the same, served to a browser that is opened for the test. */

import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { type DemoSite, demoSite } from '../site/demo-site.ts';

const CHROMIUM = '/usr/bin/chromium';

export interface OpenSite {
  readonly site: DemoSite;
  /** A size's page, the address of its folder: `eelgrass/small/`. */
  readonly kinds: Readonly<
    Record<'list' | 'pattern' | 'size' | 'full words' | 'stitches' | 'missing', string>
  >;
  /** A page of its own at an address, closed when the test is done with it. */
  readonly visit: <T>(
    address: string,
    options: BrowserContextOptions,
    look: (page: Page) => Promise<T>,
  ) => Promise<T>;
  readonly close: () => Promise<void>;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff': 'font/woff',
  '.webp': 'image/webp',
  '.jpg': 'image/jpeg',
};

export async function openSite(): Promise<OpenSite> {
  const browser = await openBrowser();
  const site = await demoSite();
  // Served under a folder, as many hosts do.
  const server = createServer(async (request, response) => {
    const asked = decodeURIComponent((request.url ?? '/').replace(/^\/somewhere\//, '').split('?')[0] ?? '');
    const file = asked === '' || asked.endsWith('/') ? `${asked}index.html` : asked;
    const content = site.pages.get(file) ?? site.files.get(file) ?? (await site.sizeFiles.get(file)?.());
    const type = TYPES[path.extname(file)] ?? 'application/octet-stream';
    response.writeHead(content === undefined ? 404 : 200, {
      'content-type': content === undefined ? 'text/html' : type,
    });
    response.end(content ?? site.pages.get('404.html'));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const withChart = site.collection.find(({ compiled }) =>
    compiled.sizes.some(({ charts }) => charts.US.length > 0),
  );
  const slug = withChart?.compiled.slug ?? 'none';
  const size = `${slug}/${withChart?.compiled.sizes[0]?.slug ?? 'none'}/`;
  return {
    site,
    kinds: {
      list: '',
      pattern: `${slug}/`,
      size,
      'full words': `${size}uk-full/`,
      stitches: 'site-stitches/',
      missing: 'no-such-pattern/',
    },
    visit: async (address, options, look) => {
      const context: BrowserContext = await browser.newContext(options);
      try {
        const page = await context.newPage();
        await page.goto(`http://127.0.0.1:${port}/somewhere/${address}`);
        return await look(page);
      } finally {
        await context.close();
      }
    },
    close: async () => {
      await browser.close();
      server.close();
    },
  };
}

export async function openBrowser(): Promise<Browser> {
  if (!existsSync(CHROMIUM)) {
    throw new Error(
      `These tests look at the pages in Chromium, which is not at ${CHROMIUM}: run .ci/run, or apt-get install chromium.`,
    );
  }
  return chromium.launch({
    executablePath: CHROMIUM,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
