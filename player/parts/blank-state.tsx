import type { ComponentChildren, JSX } from 'preact';

interface BlankStateProps {
  readonly title: string;
  readonly children?: ComponentChildren;
  /** Something went wrong: it is spoken at once. */
  readonly trouble?: boolean;
}

/** A screen or a place that has nothing to show yet, or cannot: what happened and what to do. */
export function BlankState({ title, children, trouble = false }: BlankStateProps): JSX.Element {
  return (
    <div class={`blank${trouble ? ' blank-trouble' : ''}`} role={trouble ? 'alert' : 'status'}>
      <div class="graduated" aria-hidden="true" />
      <p class="blank-title">{title}</p>
      {children}
    </div>
  );
}
