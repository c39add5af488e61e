import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Block, SignalWord } from '../../model/prose.ts';
import { wordsOfBlocks } from '../prose/words-of.ts';

/** SHA-256, in hexadecimal, of a hazard's words: the same words in another layout were acknowledged all the same. */
export function hazardDigest(word: SignalWord, blocks: readonly Block[]): string {
  const words = wordsOfBlocks(blocks).replace(/\s+/g, ' ').trim();
  return bytesToHex(sha256(utf8ToBytes(`${word}\n${words}`)));
}
