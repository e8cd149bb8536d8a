import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { createServer, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { GOOD, removeFolder, scratchFolder, startRowfold, WRONG, writePattern } from './run-rowfold.ts';

const folder = scratchFolder();
let serving: ChildProcess;
let printed = '';
let address = '';

/** What the server printed, once it has printed it. */
async function waitFor(words: RegExp): Promise<RegExpExecArray> {
  for (;;) {
    const found = words.exec(printed);
    if (found) return found;
    if (serving.exitCode !== null) throw new Error(`serve ended early: ${printed}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Writes the pattern and waits until it has been built. */
async function save(text: string, built: RegExp): Promise<void> {
  printed = '';
  writePattern(folder, 'grey-square', text);
  await waitFor(built);
}

function statusOf(host: string, path = '/', method = 'GET'): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(address);
    request({ hostname, port, path, method, headers: { host } }, (response) => {
      response.resume();
      resolve(response.statusCode);
    })
      .on('error', reject)
      .end();
  });
}

// The port is held by someone else, so the next free one must be found.
const other = createServer();

beforeAll(async () => {
  writePattern(folder, 'grey-square', GOOD);
  await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
  const taken = (other.address() as AddressInfo).port;
  serving = startRowfold(['serve', '--port', String(taken)], folder);
  for (const stream of [serving.stdout, serving.stderr]) {
    stream?.setEncoding('utf8').on('data', (text: string) => {
      printed += text;
    });
  }
  address = (await waitFor(/The site is at (http:\/\/127\.0\.0\.1:\d+\/)/))[1] ?? '';
  expect(address).not.toContain(`:${taken}/`);
});

afterAll(() => {
  serving.kill('SIGKILL');
  other.close();
  removeFolder(folder);
});

describe.sequential('serve', () => {
  test('shows the site, and sends a folder without its stroke to the folder', async () => {
    const page = await fetch(new URL('grey-square/small', address));
    expect(page.url).toBe(`${address}grey-square/small/`);
    expect(await page.text()).toContain('Grey Square');
    const booklet = await fetch(new URL('grey-square/small/grey-square-small-a4.pdf', address));
    expect(booklet.headers.get('content-type')).toBe('application/pdf');
    expect((await fetch(new URL('no-such-pattern/', address))).status).toBe(404);
  });

  test('builds again when a pattern is saved', async () => {
    await save(GOOD.replace('Grey Square', 'Slate Square'), /Built \d+ pages/);
    expect(await (await fetch(address)).text()).toContain('Slate Square');
  });

  test('keeps the last good page, with the faults above it, while a pattern has an error', async () => {
    await save(WRONG.replace('Grey Square', 'Wrong Square'), /faults in the patterns/);
    const page = await (await fetch(new URL('grey-square/', address))).text();
    expect(page).toContain('Slate Square');
    expect(page).not.toContain('Wrong Square');
    const list = /href="([^"]+)">There is 1 fault</.exec(page)?.[1] ?? 'no link to the faults';
    const faults = await (await fetch(new URL(list, address))).text();
    expect(faults).toContain('Sc in 2nd ch from hook and in each ch across, turn. (17 (24, 32) sts)');
    expect(faults).toContain('Try:');
  });

  test('takes the faults away once they are mended', async () => {
    await save(GOOD, /Built \d+ pages/);
    const page = await (await fetch(new URL('grey-square/', address))).text();
    expect(page).toContain('Grey Square');
    expect(page).not.toContain('There is 1 fault');
  });

  test('answers this computer only, for files of the site only', async () => {
    expect(await statusOf(new URL(address).host)).toBe(200);
    expect(await statusOf('patterns.example')).toBe(403);
    expect(await statusOf('localhost', '/', 'POST')).toBe(405);
    expect(await statusOf('localhost', '/%zz')).toBe(400);
    expect(await statusOf('localhost', '/..%2fpatterns/grey-square/pattern.yaml')).toBe(404);
  });

  test('ends well when it is interrupted', async () => {
    serving.kill('SIGINT');
    const [code] = await once(serving, 'exit');
    expect(code).toBe(0);
  });
});
