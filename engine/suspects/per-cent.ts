/** `38 %`; what is nearly nothing or nearly all is not rounded to it. */
export function perCent(share: number): string {
  if (share > 0 && share < 0.005) return '< 1 %';
  if (share < 1 && share > 0.995) return '> 99 %';
  return `${Math.round(share * 100)} %`;
}
