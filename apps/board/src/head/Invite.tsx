import { useRef, useState } from 'react';
import { Button, DialogTrigger, Input, Label, Popover, TextField } from 'react-aria-components';

type Copied = 'not yet' | 'copied' | 'by hand';

/** The link that opens this board. Whoever has it can change the plan, so that is said. */
export function Invite({ link }: { readonly link: string }) {
  const [copied, setCopied] = useState<Copied>('not yet');
  const field = useRef<HTMLInputElement>(null);
  const copy = async () => {
    field.current?.select();
    setCopied(await copyText(link));
  };
  return (
    <DialogTrigger onOpenChange={() => setCopied('not yet')}>
      <Button className="button">Invite</Button>
      <Popover className="popover" aria-label="Invite to this board">
        <div className="popover__inside invite">
          <p>Whoever has this link can see and change the plan. Hand it to the team only.</p>
          <TextField className="field" value={link} isReadOnly>
            <Label className="field__label">Link to this board</Label>
            <Input ref={field} className="input" />
          </TextField>
          <Button className="button button--main" onPress={copy}>
            Copy the link
          </Button>
          <p role="status" className="small soft">
            {COPIED_WORDS[copied]}
          </p>
        </div>
      </Popover>
    </DialogTrigger>
  );
}

const COPIED_WORDS: Readonly<Record<Copied, string>> = {
  'not yet': '',
  copied: 'Copied.',
  'by hand': 'This page may not copy here: the link is selected, press Ctrl or Cmd and C.',
};

/** Plain http on a local network has no clipboard: the person copies by hand then. */
async function copyText(text: string): Promise<Copied> {
  if (!navigator.clipboard) return 'by hand';
  return navigator.clipboard.writeText(text).then(
    () => 'copied',
    () => 'by hand',
  );
}
