// The page begins here: opens the store and the planner, and hands them to the workroom.
import { createElement } from 'react';
import { createRoot } from 'react-dom/client';
import { openPlanner } from '#workroom/compute';
import { App } from '#workroom/frame';
import { openPreferences, openShelf } from '#workroom/room';
import { openStore } from '#workroom/store';
import './ground.css';
import './keys.css';
import './head.css';
import './quilt-room.css';
import './job-line.css';
import './drawing.css';
import './set.css';
import './draft.css';
import './colour.css';
import './home.css';
import './sheets.css';

const preferences = openPreferences();
const shelf = openShelf();
const planner = openPlanner();
const store = await openStore();
const place = document.getElementById('workroom');
if (place === null) throw new Error('the page has no place for the workroom');
createRoot(place).render(createElement(App, { store, planner, preferences, shelf }));
