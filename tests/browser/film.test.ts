/** Links to a film beside the rows it shows, and its chapters in a real player. */

import { afterAll, beforeAll, expect, test } from 'vitest';
import { chaptersOf } from '../../src/film/chapters.ts';
import { webVtt } from '../../src/teach/chapters-file.ts';
import { type OpenSite, openSite } from './open-site.ts';

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

const PHONE = { viewport: { width: 390, height: 780 } };

test('the link beside a row opens the film at its time, says nothing of where it was followed, and nothing is asked before', async () => {
  await open.visit('lantern-square/six-rounds/', PHONE, async (page) => {
    const asked: { url: string; from: string | undefined }[] = [];
    await page.route('https://films.example.org/**', async (route) => {
      const request = route.request();
      asked.push({ url: request.url(), from: (await request.allHeaders()).referer });
      await route.fulfill({ contentType: 'text/html', body: '<title>A film</title>' });
    });
    await page.reload({ waitUntil: 'networkidle' });
    expect(asked).toEqual([]);
    const link = page.getByRole('link', { name: 'Watch round 3', exact: true });
    expect(await link.count()).toBe(1);
    const row = page.locator('.rows li', { has: link });
    expect(await row.locator('.label').first().textContent()).toBe('Rnd 3');
    expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(24);
    await link.click();
    await page.waitForURL('https://films.example.org/lantern-square#t=640');
    expect(asked).toEqual([{ url: 'https://films.example.org/lantern-square', from: undefined }]);
  });
});

test('a maker of another size is told which row of the film is hers', async () => {
  await open.visit('lantern-square/eight-rounds/', PHONE, async (page) => {
    const name = 'Watch round 7 of the size “six rounds”, made the same way';
    const row = page.locator('.rows li', { has: page.getByRole('link', { name, exact: true }) });
    expect(await row.locator('.label').first().textContent()).toBe('Rnd 9');
  });
});

test('films for either hand stand side by side, and a row that repeats others leads to those', async () => {
  await open.visit('sandbar-square/small/', { ...PHONE, javaScriptEnabled: false }, async (page) => {
    const links = await page
      .locator('.rows li', { has: page.locator('.label', { hasText: 'Rows 4–13' }) })
      .getByRole('link')
      .evaluateAll((all) => all.map((one) => `${one.textContent} ${one.getAttribute('href')}`));
    expect(links).toEqual([
      'Watch row 2, which is repeated here (right-handed) https://films.example.org/sandbar-square#t=445',
      'Watch row 3, which is repeated here (right-handed) https://films.example.org/sandbar-square#t=785',
      'Watch row 2, which is repeated here (left-handed) https://films.example.org/sandbar-square-left?from=400',
      'Watch row 3, which is repeated here (left-handed) https://films.example.org/sandbar-square-left?from=735',
    ]);
    // What begins when is folded away, and opens without a script.
    const first = page.getByRole('link', { name: 'Yarn and hook' });
    expect(await first.isVisible()).toBe(false);
    await page.getByText('What begins when').first().click();
    expect(await first.isVisible()).toBe(true);
  });
});

test('a size of her own has the links too, each under the number of the row in the film', async () => {
  await open.visit('lantern-square/your-own/?width=8&units=imperial', PHONE, async (page) => {
    await page.locator('#own-rows .rows li').first().waitFor();
    const links = await page
      .locator('#own-rows .watch a')
      .evaluateAll((all) => all.map((one) => `${one.textContent} ${one.getAttribute('href')}`));
    const film = 'https://films.example.org/lantern-square';
    expect(links).toEqual([
      `Watch the foundation ${film}#t=95`,
      `Watch round 1 ${film}#t=170`,
      `Watch round 2 ${film}#t=365`,
      `Watch round 3 ${film}#t=640`,
      `Watch rounds 4 to 6 of the size “six rounds”, made the same way ${film}#t=990`,
      `Watch round 7 of the size “six rounds”, made the same way ${film}#t=1330`,
    ]);
    expect(await page.locator('#film + .body').textContent()).toContain('stands at films.example.org');
  });
});

test('links to a film are not printed', async () => {
  await open.visit('lantern-square/six-rounds/', {}, async (page) => {
    const link = page.getByRole('link', { name: 'Watch round 3', exact: true });
    expect(await link.isVisible()).toBe(true);
    await page.emulateMedia({ media: 'print' });
    expect(await link.isVisible()).toBe(false);
    expect(await page.locator('#film').isVisible()).toBe(false);
  });
});

test('a player takes every chapter of the file, with its times and its title', async () => {
  const compiled = open.site.collection
    .map((one) => one.compiled)
    .find(({ slug }) => slug === 'lantern-square');
  const film = compiled?.pattern?.films[0];
  if (compiled?.pattern === undefined || compiled.pattern === null || film === undefined)
    throw new Error('the demo has no film');
  const chapters = chaptersOf(
    film,
    compiled.pattern,
    compiled.sizes.map(({ fabric }) => fabric),
  ).map((chapter, i) => (i === 0 ? { ...chapter, title: 'Yarn & hook <A> --> B' } : chapter));
  await open.visit('', {}, async (page) => {
    // A page of its own: that of the site allows no media.
    await page.goto('about:blank');
    const cues = await page.evaluate(async (text: string) => {
      const video = document.createElement('video');
      const track = document.createElement('track');
      track.kind = 'chapters';
      track.src = URL.createObjectURL(new Blob([text], { type: 'text/vtt' }));
      video.append(track);
      document.body.append(video);
      track.track.mode = 'hidden';
      await new Promise((resolve, reject) => {
        track.onload = resolve;
        track.onerror = reject;
      });
      return [...(track.track.cues ?? [])].map((cue) => [
        cue.startTime,
        cue.endTime,
        (cue as VTTCue).getCueAsHTML().textContent,
      ]);
    }, webVtt(chapters));
    expect(cues).toEqual(chapters.map(({ seconds, endSeconds, title }) => [seconds, endSeconds, title]));
    expect(cues).toHaveLength(8);
  });
});
