-- The language that the pages speak, and the country by whose customs days, numbers and amounts are written and paper is cut.
alter table shop add column language varchar(2) default 'en' not null;
alter table shop add column country varchar(2) default 'US' not null;
update shop set country = 'GB' where tax_table = 'uk-self-employment-short';
