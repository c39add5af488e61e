import type { CompiledTree } from '../../engine/model/compiled-tree.ts';

/** The key under which a tree's whole text is kept. A tree's digest leaves its prose apart, but a job
 *  must show the words that were acknowledged in it. */
export async function treeKey(tree: CompiledTree): Promise<string> {
  const [{ sha256 }, { bytesToHex, utf8ToBytes }] = await Promise.all([
    import('@noble/hashes/sha2.js'),
    import('@noble/hashes/utils.js'),
  ]);
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(tree))));
}
