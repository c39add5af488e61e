/** Signs that HTML takes for errors: control characters of the upper kind, and code points that are no characters. */
const odd =
  /[\u007F-\u009F\uFDD0-\uFDEF]|[\uD83F\uD87F\uD8BF\uD8FF\uD93F\uD97F\uD9BF\uD9FF\uDA3F\uDA7F\uDABF\uDAFF\uDB3F\uDB7F\uDBBF\uDBFF][\uDFFE\uDFFF]/g;

/** Text without signs that HTML cannot hold; lines end in one way. */
export const plainSigns = (text: string): string => text.replace(/\r\n?/g, '\n').replace(odd, '\uFFFD');
