import { Button, type DropItem, DropZone, FileTrigger, Text } from 'react-aria-components';

interface DropFieldProps {
  readonly onFiles: (files: readonly File[]) => void;
}

/** Where a course, a board file or a picture is dropped, or a file chosen from the disk. */
export function DropField({ onFiles }: DropFieldProps) {
  return (
    <DropZone className="drop" onDrop={async ({ items }) => onFiles(await filesIn(items))}>
      <Text slot="label" className="drop__label">
        Drop a GeoJSON course (longitude and latitude, golf=hole) or a Loopwright board file here; a picture of the site
        begins a new board
      </Text>
      <FileTrigger
        acceptedFileTypes={['.json', '.geojson', 'application/json', 'application/geo+json']}
        onSelect={(files) => {
          if (files) onFiles([...files]);
        }}
      >
        <Button className="button button--main">Choose a file</Button>
      </FileTrigger>
      <p className="small soft">It is read on this machine; nothing is sent before you make the board.</p>
    </DropZone>
  );
}

async function filesIn(items: readonly DropItem[]): Promise<readonly File[]> {
  const files = items.flatMap((item) => (item.kind === 'file' ? [item.getFile()] : []));
  return Promise.all(files);
}
