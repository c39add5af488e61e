import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { PictureSize } from './picture-view.ts';
import { safePictureUrl } from './safe-picture-url.ts';

/** The size of a picture once it is there; null while it is not, and `none` where it cannot be shown. */
export function usePicture(url: string): PictureSize | 'none' | null {
  const size = useSignal<PictureSize | 'none' | null>(null);
  useEffect(() => {
    const safe = safePictureUrl(url);
    size.value = safe === null ? 'none' : null;
    if (safe === null) return;
    const image = new Image();
    let wanted = true;
    image.onload = () => {
      if (!wanted) return;
      const { naturalWidth: width, naturalHeight: height } = image;
      size.value = width > 0 && height > 0 ? { width, height } : 'none';
    };
    image.onerror = () => {
      if (wanted) size.value = 'none';
    };
    image.src = safe;
    return () => {
      wanted = false;
    };
  }, [url]);
  return size.value;
}
