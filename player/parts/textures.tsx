import type { JSX } from 'preact';

/** The fillings of bands, so that no band is told by colour alone. Names as `textureOf` gives them. */
export function Textures({ id }: { readonly id: string }): JSX.Element {
  const hatch = (name: string, turn: number, step: number) => (
    <pattern
      id={id + name}
      width={step}
      height={step}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
    >
      <path class="hatch" d={`M0 0V${step}`} />
    </pattern>
  );
  return (
    <defs>
      <pattern id={`${id}normal`} width="8" height="8" patternUnits="userSpaceOnUse">
        <rect class="wash" width="8" height="8" />
      </pattern>
      <pattern id={`${id}any`} width="6" height="6" patternUnits="userSpaceOnUse">
        <circle class="dot" cx="3" cy="3" r="0.9" />
      </pattern>
      {hatch('below1', 45, 7)}
      {hatch('below2', 45, 4)}
      {hatch('above1', -45, 7)}
      {hatch('above2', -45, 4)}
    </defs>
  );
}

/** Normal is plain wash, below it the hatching leans one way, above it the other, denser farther away. */
export function textureOf(index: number, places: readonly { readonly normal: boolean }[]): string {
  const firstNormal = places.findIndex((place) => place.normal);
  if (firstNormal < 0) return 'any';
  if (places[index]?.normal) return 'normal';
  const steps = Math.abs(index - firstNormal);
  return `${index < firstNormal ? 'below' : 'above'}${Math.min(steps, 2)}`;
}
