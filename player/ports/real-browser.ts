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
  newSeed() {
    return crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
  },
  addressOf: (place) => `${location.href.replace(/#.*$/, '')}#${place}`,
  async copy(text) {
    try {
      await navigator.clipboard.writeText(text);
      return true;
    } catch {
      return false;
    }
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
