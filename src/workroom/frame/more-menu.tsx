// What is done seldom, out of the book of commands.
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { useAllCommands } from '#workroom/commands';

const shown = ['print', 'save file', 'open file', 'copy quilt', 'keep point', 'go compare', 'find', 'keys', 'likings'];

export const MoreMenu = () => {
  const commands = useAllCommands();
  const items = shown.flatMap((id) => commands.find((command) => command.id === id) ?? []);
  return (
    <MenuTrigger>
      <Button className="more-key">More</Button>
      <Popover className="menu-ground" placement="bottom end">
        <Menu className="menu" aria-label="More" onAction={(id) => items.find((item) => item.id === id)?.run()}>
          {items.map(({ id, words }) => (
            <MenuItem key={id} id={id} className="menu-item">
              {words}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
};
