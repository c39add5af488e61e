import type { ComponentChildren, JSX } from 'preact';

interface PartProps {
  readonly title: string;
  readonly lines: readonly ComponentChildren[];
}

/** A heading with a list, or nothing where the list is empty. */
export function Part({ title, lines }: PartProps): JSX.Element | null {
  if (lines.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul class="plain-list">
        {lines.map((line, index) => (
          <li key={index}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
