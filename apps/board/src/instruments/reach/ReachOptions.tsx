import {
  Button,
  Checkbox,
  CheckboxGroup,
  DialogTrigger,
  Label,
  Popover,
  ToggleButton,
  ToggleButtonGroup,
} from 'react-aria-components';
import type { Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { CLUBS, MODEL_PLAYERS } from './reach-arcs.ts';
import type { ReachChoice } from './reach-choice.ts';
import { REACH_SOURCES } from './reach-sources.ts';
import type { RunningReach } from './start-reach.ts';

interface ReachOptionsProps {
  readonly held: Watched<RunningReach | undefined>;
  readonly choice: ReachChoice;
}

/** What may be chosen beside the reach: whose, which clubs, and what becomes of it; and where the distances come from. */
export function ReachOptions({ held, choice }: ReachOptionsProps) {
  const running = useWatched(held);
  if (!running) return null;
  return (
    <>
      <Players choice={choice} />
      <Clubs choice={choice} />
      <Sources />
      <Button className="button button--small" onPress={running.turn}>
        Turn here
      </Button>
    </>
  );
}

function Players({ choice }: { readonly choice: ReachChoice }) {
  const players = useWatched(choice.players);
  return (
    <ToggleButtonGroup
      className="choices"
      aria-label="Whose reach"
      selectionMode="multiple"
      disallowEmptySelection
      selectedKeys={players}
      onSelectionChange={(keys) => choice.players.set(MODEL_PLAYERS.filter((player) => keys.has(player)))}
    >
      {MODEL_PLAYERS.map((player) => (
        <ToggleButton key={player} id={player} className="choices__choice">
          {player}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

function Clubs({ choice }: { readonly choice: ReachChoice }) {
  const clubs = useWatched(choice.clubs);
  return (
    <DialogTrigger>
      <Button className="button button--small">Clubs …</Button>
      <Popover className="popover" aria-label="Clubs that are drawn">
        <CheckboxGroup
          className="popover__inside reach__clubs"
          value={[...clubs]}
          onChange={(chosen) => choice.clubs.set(CLUBS.filter((club) => chosen.includes(club)))}
        >
          <Label className="field__label">Clubs that are drawn</Label>
          {CLUBS.map((club) => (
            <Checkbox key={club} value={club} className="reach__club">
              <span className="reach__tick" aria-hidden="true" />
              {club}
            </Checkbox>
          ))}
        </CheckboxGroup>
      </Popover>
    </DialogTrigger>
  );
}

function Sources() {
  return (
    <DialogTrigger>
      <Button className="button button--small">Sources …</Button>
      <Popover className="popover" aria-label="Where the distances come from">
        <div className="popover__inside small">
          {REACH_SOURCES.map((source) => (
            <p key={source}>{source}</p>
          ))}
        </div>
      </Popover>
    </DialogTrigger>
  );
}
