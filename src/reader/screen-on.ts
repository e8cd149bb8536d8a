/** A button that keeps the screen from going dark, where the browser can; it is lost with the page out of sight, so it is asked for anew. */

export function keepScreenOn(button: HTMLButtonElement): void {
  if (!('wakeLock' in navigator)) return;
  button.hidden = false;
  let lock: WakeLockSentinel | null = null;
  let wanted = false;
  const hold = async (): Promise<void> => {
    try {
      lock =
        wanted && document.visibilityState === 'visible' ? await navigator.wakeLock.request('screen') : null;
    } catch {
      // A phone low on power refuses.
      wanted = false;
    }
    button.setAttribute('aria-pressed', String(wanted));
  };
  button.addEventListener('click', async () => {
    wanted = !wanted;
    if (!wanted) await lock?.release();
    await hold();
  });
  document.addEventListener('visibilitychange', () => {
    if (wanted && document.visibilityState === 'visible') hold();
  });
}
