import type { FileKind } from '../diagnostics/body-facts.ts';
import type { BodySyntax } from '../read/body-syntax.ts';
import { sectionKinds } from '../read/kinds/index.ts';
import type { MadeKind } from '../read/section-syntax.ts';
import { type LinkContext, report } from './link-context.ts';
import { placeIn } from './place-in.ts';

const has: Readonly<Record<FileKind, readonly MadeKind[]>> = {
  tree: ['check', 'task', 'call', 'fault', 'stop'],
  procedure: ['check', 'task', 'call', 'end', 'stop'],
  shared: [],
};

/** Reports sections that files of this kind do not have: `End` in a tree, `Fault` in a procedure. */
export function checkFileKind(
  sections: BodySyntax['sections'],
  kind: FileKind,
  context: Pick<LinkContext, 'diagnostics'>,
): void {
  for (const { syntax, from } of sections) {
    if (syntax.kind === 'unknown' || has[kind].includes(syntax.kind)) continue;
    const { word } = sectionKinds[syntax.kind];
    report(context, { code: 'wrong-file-kind', word, kind }, placeIn(from, syntax.leadSpan));
  }
}
