// The page begins here: opens the store and the planner, and hands them to the workroom.
import { createElement } from 'react';
import { createRoot } from 'react-dom/client';
import { openPlanner } from '#workroom/compute';
import { App } from '#workroom/frame';
import { openPreferences } from '#workroom/room';
import { openStore } from '#workroom/store';
import './look/ground.css';
import './look/keys.css';
import './look/head.css';
import './look/quilt-room.css';
import './look/job-line.css';
import './look/drawing.css';
import './look/set.css';
import './look/draft.css';
import './look/colour.css';
import './look/home.css';
import './look/sheets.css';

const preferences = openPreferences();
const planner = openPlanner();
const store = await openStore();
const place = document.getElementById('workroom');
if (place === null) throw new Error('the page has no place for the workroom');
createRoot(place).render(createElement(App, { store, planner, preferences }));
