"""Everything of Brimline that touches the world: chat, database, scheduler, terminal."""
