import type { JSX } from 'preact';
import type { Section } from '../../../../engine/model/section.ts';

/** The steps that led here, the first on top. */
export function WalkedPath({ path }: { readonly path: readonly Section[] }): JSX.Element {
  return (
    <ol class="path">
      {path.map(({ id, title }, index) => (
        <li key={`${id} ${index}`} aria-current={index === path.length - 1 ? 'step' : undefined}>
          {title}
        </li>
      ))}
    </ol>
  );
}
