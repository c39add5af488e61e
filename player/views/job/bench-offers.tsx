import type { JSX } from 'preact';
import type { Session } from '../../../engine/run/index.ts';
import type { App } from '../../models/app.ts';
import { equipAnswer, keptEquipment } from '../../models/kept-equipment.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { Offer } from './offer.tsx';

interface BenchOffersProps {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
}

/** What has changed around a job since it was last worked on: offered, never forced. */
export function BenchOffers({ app, job, session }: BenchOffersProps): JSX.Element {
  const goNewer = async () => {
    if (await job.answer({ say: 'newer', digest: null })) job.newerThere.value = false;
  };
  const useThese = async () => {
    const equipment = keptEquipment(app.ports.settings);
    if (await job.answer(equipAnswer(equipment))) job.otherBench.value = false;
  };
  return (
    <>
      {job.newerThere.value && (
        <Offer
          text={`There is another version of "${session.loaded.tree.title}" now. What was read is kept and judged by it`}
          act="Go on with it"
          onAct={() => void goNewer()}
          decline="Stay with this one"
          onDecline={() => (job.newerThere.value = false)}
        />
      )}
      {job.otherBench.value && (
        <Offer
          text="This bench has other instruments than this job was walked with so far"
          act="Go by this bench's from now on"
          onAct={() => void useThese()}
          decline="Leave it as it is"
          onDecline={() => (job.otherBench.value = false)}
        />
      )}
    </>
  );
}
