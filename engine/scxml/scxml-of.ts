import { type Element, element, printXml } from '../markup/index.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { MachineState, MachineTransition } from '../model/machine.ts';
import type { Section } from '../model/section.ts';
import { conditionOf } from './condition-of.ts';
import { tableLiteral } from './ecmascript.ts';
import { idOf, type StatePath, targetOf } from './state-path.ts';

/**
 * The machine of a tree as State Chart XML 1.0 (W3C Recommendation, 1 September 2015) with the ECMAScript data model.
 *
 *     scxml
 *       state tree                        go [_event.data.section === …] leads from everywhere to any section
 *         state s-power-good              checked [… _event.data.bands['power_good'] …]
 *         state s-no-power-good
 *           state s-no-power-good.remedy-1
 *       final mended
 *
 * An id is the path of the state with dots between; the root is left out of the paths below it. Events are those of the
 * machine, with `_event.data` holding what they carry: `bands` of `checked`, `section` of `go`.
 * The titles stand in the data `about` and `titles`.
 */
export function scxmlOf(tree: CompiledTree): string {
  const { machine, id, title, symptom, digest, sections } = tree;
  const { states, initial, on } = machine;
  const outer = Object.entries(states).filter(([, { type }]) => type === 'final');
  const inner = Object.entries(states).filter(([, { type }]) => type !== 'final');
  const root = [] satisfies StatePath;
  return printXml(
    element(
      'scxml',
      {
        xmlns: 'http://www.w3.org/2005/07/scxml',
        version: '1.0',
        datamodel: 'ecmascript',
        initial: machine.id,
      },
      element(
        'datamodel',
        {},
        element('data', {
          id: 'about',
          expr: tableLiteral([
            ['tree', id],
            ['title', title],
            ['symptom', symptom],
            ['digest', digest],
          ]),
        }),
        element('data', { id: 'titles', expr: tableLiteral(sections.map(titleRow)) }),
      ),
      element(
        'state',
        { id: machine.id, initial: idOf([initial]) },
        transitions(tree, root, on),
        inner.map(([key, state]) => stateElement(tree, [key], state)),
      ),
      outer.map(([key]) => element('final', { id: idOf([key]) })),
    ),
  );
}

const titleRow = ({ id, title }: Section): readonly [string, string] => [id, title];

function stateElement(tree: CompiledTree, path: StatePath, state: MachineState): Element {
  const { initial, states = {}, on } = state;
  return element(
    state.type === 'final' ? 'final' : 'state',
    { id: idOf(path), initial: initial && idOf([...path, initial]) },
    transitions(tree, path, on),
    Object.entries(states).map(([key, inside]) => stateElement(tree, [...path, key], inside)),
  );
}

const transitions = (tree: CompiledTree, path: StatePath, on: MachineState['on'] = {}): readonly Element[] =>
  Object.entries(on).flatMap(([event, list]) =>
    list.map(({ target, guard }: MachineTransition) =>
      element('transition', {
        event,
        cond: conditionOf(guard),
        target: target && idOf(targetOf(tree.machine, path, target)),
      }),
    ),
  );
