/** Pages and booklets that were opened once can be opened again without a network: `offline.ts` keeps them. */

import { OFFLINE_SCRIPT } from '../site/addresses.ts';

export function keepPagesForOffline(root: string): void {
  if (!('serviceWorker' in navigator)) return;
  // A browser that forbids it shows pages as long as there is a network.
  navigator.serviceWorker.register(`${root}${OFFLINE_SCRIPT}`).catch(() => {});
}
