import type { JSX } from 'preact';
import type { DebriefStep } from '../../models/practice/debrief-steps.ts';
import { asShown } from '../../parts/as-shown.ts';

/** Everything that was done, with the suspects before and after it: the drawing in words. */
export function StepTable({ steps }: { readonly steps: readonly DebriefStep[] }): JSX.Element {
  const most = Math.max(1, ...steps.map(({ halvings }) => halvings ?? 0));
  return (
    <table class="figures-table steps-table">
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">What</th>
          <th scope="col">Showed</th>
          <th scope="col">Minute</th>
          <th scope="col">Suspects</th>
          <th scope="col">Worth, in halvings</th>
        </tr>
      </thead>
      <tbody>
        {steps.map((step) => (
          <tr key={step.number}>
            <td class="step-number">{step.number}</td>
            <th scope="row">
              {asShown(step.what)}
              {remarksOn(step).map((remark) => (
                <small key={remark} class="step-remark">
                  {asShown(remark)}
                </small>
              ))}
            </th>
            <td data-head="Showed">{asShown(step.showed)}</td>
            <td data-head="Minute">{step.minute}</td>
            <td data-head="Suspects">
              {suspectsText(step.before)} → {suspectsText(step.after)}
            </td>
            <td data-head="Worth, in halvings">
              <Worth halvings={step.halvings} most={most} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function remarksOn({ passed, predicted }: DebriefStep): readonly string[] {
  return [
    ...(predicted === null
      ? []
      : [`You said "${predicted.said}" before: ${predicted.right ? 'so it came' : 'it came otherwise'}`]),
    ...passed.map(({ text, harm }) => `Passed over: ${text}${harm ? '. It did harm on this board' : ''}`),
  ];
}

/** So many equally likely suspects: `18`, `2.3`, `1`. */
const suspectsText = (suspects: number): string =>
  suspects >= 9.95 ? suspects.toFixed(0) : suspects.toFixed(1).replace(/\.0$/, '');

interface WorthProps {
  readonly halvings: number | null;
  readonly most: number;
}

/** How much a check told, as a length and as a figure. */
function Worth({ halvings, most }: WorthProps): JSX.Element | null {
  if (halvings === null) return null;
  return (
    <span class="worth">
      <span class="worth-length" style={{ width: `${(halvings / most) * 4}em` }} aria-hidden="true" />
      {halvings.toFixed(halvings < 0.095 ? 2 : 1)}
    </span>
  );
}
