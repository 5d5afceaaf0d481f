// Runs only in browsers that know no script modules, so it is written in the language of their time.
(function () {
  var note = document.createElement('p');
  note.className = 'shell-note';
  note.appendChild(document.createTextNode(
    'This browser is too old to run Skimwright. An up-to-date browser will do. '
    + 'The link in the address holds the whole job: open it there.'
  ));
  var app = document.getElementById('app');
  while (app.firstChild) {
    app.removeChild(app.firstChild);
  }
  app.appendChild(note);
}());
