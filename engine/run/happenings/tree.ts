import { suitsSetting } from '../../board/index.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { SettingValues } from '../../model/present.ts';
import { type LoadedTree, loadTree } from '../load-tree.ts';
import { startPosition } from '../position.ts';
import { type Session, treeNow } from '../session.ts';
import { twinsOf } from '../twins-of.ts';
import type { Happening } from './happening.ts';
import { part } from './in-place.ts';

/** The job goes on in another tree. Where it is a newer version of the one it is in, the entries before were walked
 *  once more already (see `newerTrees`), and the walk goes on from where they lead. */
export const tree: Happening<'tree'> = (session, { digest, why }, index) => {
  const found = [session.firstTree, ...session.laterTrees].find((each) => each.digest === digest);
  if (found === undefined) return { ...session, misfits: [...session.misfits, index] };
  return why === 'newer' ? { ...session, parted: false } : handedOver(session, found, index);
};

/** From the other tree's start, with everything that is known. A step back leads out of it again. */
function handedOver(session: Session, other: CompiledTree, index: number): Session {
  const { position } = session;
  const isHere = position.section?.kind === 'hand-over' && position.section.tree === other.id;
  if (!isHere || session.parted || session.closed !== null) return part(session, index);
  const loaded = loadTree(treeNow(session, other), session.board);
  return {
    ...session,
    loaded,
    settings: suitingIn(loaded, session.settings),
    twins: new Map([...twinsOf(loaded, session.board), ...session.twins]),
    position: startPosition(loaded, position),
  };
}

/** A setting of the same name that is another thing in this tree is asked for. */
const suitingIn = ({ settings }: LoadedTree, noted: SettingValues): SettingValues =>
  new Map(
    [...noted].filter(([id, value]) => {
      const setting = settings.get(id);
      return setting === undefined || value === null || suitsSetting(setting, value);
    }),
  );
