import type { Routing } from '@loopwright/model';
import type { HeadProps } from '../../board/parts.ts';
import { freshId } from '../../reading/fresh-id.ts';
import { RoundsSheet } from '../../round/rounds/RoundsSheet.tsx';
import { NameSheet } from '../../style/NameSheet.tsx';
import { SureSheet } from '../../style/SureSheet.tsx';
import { routingTitle } from '../routing-title.ts';
import { nextRoutingName } from './routing-words.ts';
import { StartRoutingSheet } from './StartRoutingSheet.tsx';

/** What is asked about the routing shown. */
export type RoutingQuestion = 'copy' | 'rename' | 'new' | 'remove' | 'rounds';

interface RoutingQuestionsProps extends Pick<HeadProps, 'routing' | 'routings' | 'edit' | 'onRouting'> {
  readonly question: RoutingQuestion;
  readonly onClose: () => void;
}

/** The sheet of one question about routings. */
export function RoutingQuestions({ question, routing, routings, edit, onRouting, onClose }: RoutingQuestionsProps) {
  switch (question) {
    case 'new':
      return <StartRoutingSheet routings={routings} edit={edit} onRouting={onRouting} onClose={onClose} />;
    case 'rounds':
      return <RoundsSheet routing={routing} edit={edit} onClose={onClose} />;
    case 'copy':
      return <CopySheet {...{ routing, routings, edit, onRouting, onClose }} />;
    case 'rename':
      return (
        <NameSheet
          title={`Rename ${routingTitle(routing)}`}
          label="Its name"
          name={routing.name}
          does="Rename"
          onName={(name) => edit({ edit: 'name routing', routing: routing.id, name })}
          onClose={onClose}
        />
      );
    case 'remove':
      return (
        <SureSheet
          title={`Remove ${routingTitle(routing)}?`}
          words="Its holes, loops and rounds go off the board for everybody. Undo brings it back."
          does="Remove it"
          onSure={() => removeShown(routing, routings, edit, onRouting)}
          onClose={onClose}
        />
      );
  }
}

function CopySheet({ routing, routings, edit, onRouting, onClose }: Omit<RoutingQuestionsProps, 'question'>) {
  const copy = (name: string) => {
    const as = freshId('r');
    edit({ edit: 'copy routing', routing: routing.id, as, name });
    onRouting(as);
  };
  return (
    <NameSheet
      title={`Copy ${routingTitle(routing)}`}
      label="Name of the copy"
      name={nextRoutingName(routings)}
      does="Copy"
      onName={copy}
      onClose={onClose}
    >
      <p className="small soft">
        The copy is shown next and is not locked. Press V to flip between the two: holes keep what they are known by, so
        that they compare.
      </p>
    </NameSheet>
  );
}

function removeShown(
  routing: Routing,
  routings: HeadProps['routings'],
  edit: HeadProps['edit'],
  onRouting: HeadProps['onRouting'],
): void {
  const other = routings.find(({ id }) => id !== routing.id);
  edit({ edit: 'remove routing', routing: routing.id });
  if (other) onRouting(other.id);
}
