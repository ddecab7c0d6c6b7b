-- The role under which `frywright serve` runs on PostgreSQL: it reads and appends entries and can change,
-- remove or empty none; it makes no table, owns none and sets no session into replication.
-- Run it as the database's owner after the owner opened the store once (that makes the tables), and again
-- after an upgrade: psql -v app=frywright_app -f least_rights.sql DATABASE
REVOKE ALL ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO :"app";
REVOKE ALL ON ALL TABLES IN SCHEMA public FROM :"app";
GRANT SELECT ON alembic_version TO :"app";
GRANT SELECT, INSERT ON entry TO :"app";
GRANT SELECT, INSERT, UPDATE, DELETE ON account, device, session, answered, draft, private, person, handed_in TO :"app";
