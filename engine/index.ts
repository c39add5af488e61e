/** The public door: from the text of a tree to a tree that can be walked, and every stage in between. */
export { type Analysis, analyse } from './analysis/analyse.ts';
export type { Astray, FaultWalk } from './analysis/fault-walk.ts';
export { checkFile, type StudiedFile } from './check-file.ts';
export { type Compiled, compileTree, type Examined, examine } from './compile.ts';
export {
  type CheckedFile,
  compileFile,
  compileProcedure,
  compileShared,
  compileSheet,
  type FileKind,
} from './compile-file.ts';
export type { Diagnostic, DiagnosticCode, Fix, Severity } from './diagnostics/diagnostic.ts';
export {
  type DiagnosticJson,
  describe,
  diagnosticJson,
  formatDiagnostic,
} from './diagnostics/index.ts';
export { digestTree } from './emit/digest-tree.ts';
export { emitCompiledTree } from './emit/emit-compiled-tree.ts';
export { emitMachine } from './emit/emit-machine.ts';
export { readFacts } from './facts/index.ts';
export { Memory } from './foreign/memory.ts';
export { emptyLibrary, type Library } from './library/library.ts';
export { idOfPath, resolvePath } from './library/resolve-path.ts';
export { linkTree } from './link/link-tree.ts';
export type { LinkedSection, LinkedTree } from './link/linked-tree.ts';
export type { CompiledTree } from './model/compiled-tree.ts';
export type { Machine, MachineEvent } from './model/machine.ts';
export type { Section } from './model/section.ts';
export { openBlock, parseBody, parseFrontMatter } from './parse/index.ts';
export type { BodySyntax } from './read/body-syntax.ts';
export { readBody } from './read/read-body.ts';
export { readSection } from './read/read-section.ts';
export type { HeadSyntax, SectionSyntax } from './read/section-syntax.ts';
export { checkRules, rules } from './rules/index.ts';
export type { Rule } from './rules/rule.ts';
export { splitSource } from './source/split-source.ts';
