import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Practise } from '../../models/practice/practise.ts';
import type { FamilyProgress } from '../../models/practice/progress.ts';
import { Action } from '../../parts/action.tsx';

/** How practice goes, family by family of faults. */
export function FamilyTable({ practise }: { readonly practise: Practise }): JSX.Element {
  const asked = useSignal(false);
  const families = practise.progress.value;
  return (
    <section aria-labelledby="how-it-goes">
      <h2 id="how-it-goes">How it goes</h2>
      {families.length === 0 ? (
        <p class="hint">
          Nothing yet. Each board you finish is counted here by the kind of fault it had, on this device only.
        </p>
      ) : (
        <>
          <Families families={families} />
          <p class="hint">
            Kept on this device only, and sent nowhere. A board counts once: playing it again changes nothing.
          </p>
          {asked.value ? (
            <p class="asked" role="alert">
              <span>All of these counts go away, and cannot be brought back.</span>
              <Action
                onAct={() => {
                  practise.clearProgress();
                  asked.value = false;
                }}
              >
                Clear them
              </Action>
              <Action rank="quiet" onAct={() => (asked.value = false)}>
                Keep them
              </Action>
            </p>
          ) : (
            <Action rank="quiet" onAct={() => (asked.value = true)}>
              Clear the counts
            </Action>
          )}
        </>
      )}
    </section>
  );
}

function Families({ families }: { readonly families: readonly FamilyProgress[] }): JSX.Element {
  return (
    <table class="figures-table">
      <thead>
        <tr>
          <th scope="col">Kind of fault</th>
          <th scope="col">Boards</th>
          <th scope="col">Right at first</th>
          <th scope="col">Without hints</th>
          <th scope="col">Time, best checks = 1</th>
        </tr>
      </thead>
      <tbody>
        {families.map(({ family, drills, rightAtFirst, unaided, against }) => (
          <tr key={family}>
            <th scope="row">{family}</th>
            <td data-head="Boards">{drills}</td>
            <td data-head="Right at first">{rightAtFirst}</td>
            <td data-head="Without hints">{unaided}</td>
            <td data-head="Time, best checks = 1">{against === null ? '–' : against.toFixed(1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
