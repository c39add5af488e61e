import type { Browser } from './browser.ts';

const letters = '23456789abcdefghjkmnpqrstuvwxyz';

export const realBrowser: Browser = {
  print: () => window.print(),
  askToKeepData() {
    navigator.storage?.persist?.().catch(() => {});
  },
  newId() {
    const bytes = crypto.getRandomValues(new Uint8Array(12));
    return Array.from(bytes, (byte) => letters[byte % letters.length]).join('');
  },
  place: () => location.hash.replace(/^#/, ''),
  go(place, how) {
    if (how === 'push') location.hash = place;
    else location.replace(`#${place}`);
  },
  onPlace(hear) {
    const onChange = () => hear(location.hash.replace(/^#/, ''));
    window.addEventListener('hashchange', onChange);
    return () => window.removeEventListener('hashchange', onChange);
  },
  online: () => navigator.onLine,
};
