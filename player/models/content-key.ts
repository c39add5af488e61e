import type { CompiledBoard } from '../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';

/** The key under which the whole of a tree or a board sheet is kept. Their digests leave prose apart, but a job
 *  must show the words that were acknowledged in it. */
export async function contentKey(content: CompiledTree | CompiledBoard): Promise<string> {
  const [{ sha256 }, { bytesToHex, utf8ToBytes }] = await Promise.all([
    import('@noble/hashes/sha2.js'),
    import('@noble/hashes/utils.js'),
  ]);
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(content))));
}
