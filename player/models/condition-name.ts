/** A condition as it is labelled: `cards` → `Cards`, `cpu` → `CPU`, `back_cover` → `Back cover`. */
export function conditionName(id: string): string {
  const words = id.replaceAll('_', ' ');
  return words.length <= 3 ? words.toUpperCase() : `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
