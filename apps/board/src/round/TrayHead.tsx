interface TrayHeadProps {
  readonly empty: boolean;
}

/** Where spare holes lie: kept on the plan, out of the round. */
export function TrayHead({ empty }: TrayHeadProps) {
  return (
    <li className="tray" data-slot="tray">
      <h3 className="tray__title">Spare holes</h3>
      {empty && <p className="small soft">None. Drag a bead here to take its hole out of the round.</p>}
    </li>
  );
}
