const kinds: Readonly<Record<string, string>> = {
  svg: 'svg+xml',
  png: 'png',
  jpg: 'jpeg',
  jpeg: 'jpeg',
};

/** A picture as a `data:` address, so that it travels with whatever shows it.
 *  @param path its kind follows from the ending; whatever has another one is taken for PNG */
export function pictureUrl(path: string, bytes: Uint8Array): string {
  const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase();
  return `data:image/${kinds[ending] ?? 'png'};base64,${base64(bytes)}`;
}

/** In pieces: a function takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 0x8000)
    text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}
