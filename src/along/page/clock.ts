/** On the page of an along: beside each release, the same instant by the reader's own clock. */

import { dayWords, hourWords, placeOfZone } from '../clock-words.ts';

const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
for (const time of document.querySelectorAll('time[datetime]')) {
  const ms = Date.parse(time.getAttribute('datetime') ?? '');
  if (Number.isNaN(ms)) continue;
  const own = document.createElement('span');
  own.className = 'own-clock';
  own.textContent = `${dayWords(ms, zone)}, ${hourWords(ms, zone)} by your clock (${placeOfZone(zone)})`;
  time.after(own);
}
