import type { Root } from 'mdast';
import type { Slice } from '../model/source.ts';
import { markdown } from './markdown.ts';

export type {
  Blockquote,
  Code,
  Definition,
  Heading,
  Html,
  Image,
  InlineCode,
  Link,
  List,
  ListItem,
  Paragraph,
  PhrasingContent,
  Root,
  RootContent,
  Table,
  TableCell,
  Text,
} from 'mdast';

/** The syntax of the head or of one section. Offsets count from the slice's first character,
 *  so that a section that only moved need not be parsed again. */
export const parseBody = (slice: Slice): Root => markdown(slice.text);
